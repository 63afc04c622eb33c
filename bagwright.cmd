@echo off
rem Starts Bagwright; builds it first if it was never built. Needs Java 17 or newer, and Maven for the first build.
rem The shell script bagwright is the same for Linux and macOS; a test holds the two together.
rem No blocks in parentheses: a folder such as "Program Files (x86)" would end them early.
setlocal EnableExtensions DisableDelayedExpansion

set "home=%~dp0"
set "home=%home:~0,-1%"
set "jar=%home%\target\bagwright.jar"
set "classes=%home%\target\bagwright.jsa"
set "lock=%home%\target\building"
set "scratch=%TEMP%\bagwright-%RANDOM%-%RANDOM%"

rem One compiler tier and an archive of loaded classes: most of a run is start-up.
set "options=-XX:+UseSerialGC -XX:-UsePerfData -XX:TieredStopAtLevel=1 -XX:MaxRAMPercentage=50 -Xshare:auto -Xlog:disable"

set "java=java"
if not defined JAVA_HOME goto findjava
if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
:findjava
if not "%java%"=="java" goto havejava
where java >nul 2>&1
if errorlevel 1 goto nojava
:havejava

rem Whoever makes the folder "building" builds; anyone else waits until it is gone.
if not exist "%jar%" goto lock
if not exist "%home%\target\lib\" goto lock
if not exist "%lock%\" goto classes
:lock
if not exist "%home%\target\" md "%home%\target" 2>nul
if not exist "%home%\target\" goto readonly
set /a waited=0
:wait
md "%lock%" 2>nul && goto locked
if %waited%==0 echo bagwright: waiting for another start that builds ...>&2
if %waited% GEQ 900 goto stuck
set /a waited+=1
ping -n 2 127.0.0.1 >nul
goto wait
:locked
if not exist "%jar%" goto build
if not exist "%home%\target\lib\" goto build
rd "%lock%" 2>nul
goto classes

:build
md "%scratch%"
set "version="
set "major="
"%java%" -version >"%scratch%\version" 2>&1
for /f "tokens=3" %%v in ('findstr /c:" version " "%scratch%\version"') do if not defined version set "version=%%~v"
for /f "delims=.-+" %%m in ("%version%") do set "major=%%m"
if not defined major goto oldjava
if %major% LSS 17 goto oldjava
where mvn >nul 2>&1
if errorlevel 1 goto nomaven
echo bagwright: building, once ...>&2
pushd "%home%"
call mvn -q -B -Dmaven.test.skip=true package >"%scratch%\log" 2>&1
set "built=%ERRORLEVEL%"
popd
if not "%built%"=="0" goto failed
rd /s /q "%scratch%" 2>nul
rd "%lock%" 2>nul

:classes
rem The newer of jar and archive is listed last.
set "newest="
for /f "delims=" %%f in ('dir /b /o:d "%home%\target\bagwright.j??" 2^>nul') do set "newest=%%f"
if /i "%newest%"=="bagwright.jsa" goto run
md "%home%\target\bagwright-try-%RANDOM%" 2>nul || goto run
for /d %%d in ("%home%\target\bagwright-try-*") do rd "%%d" 2>nul
md "%scratch%" 2>nul
"%java%" %options% "-XX:ArchiveClassesAtExit=%scratch%\classes" -cp "%jar%;%home%\target\lib\*" org.bagwright.cli.Main demo trio -o "%scratch%" >nul 2>&1
move /y "%scratch%\classes" "%classes%" >nul 2>&1
rd /s /q "%scratch%" 2>nul

:run
if exist "%classes%" goto shared
"%java%" %options% -cp "%jar%;%home%\target\lib\*" org.bagwright.cli.Main %*
exit /b %ERRORLEVEL%
:shared
"%java%" %options% "-XX:SharedArchiveFile=%classes%" -cp "%jar%;%home%\target\lib\*" org.bagwright.cli.Main %*
exit /b %ERRORLEVEL%

:nojava
echo bagwright: Java is missing. Install a Java 17 development kit (JDK), then try again.>&2
exit /b 1

:oldjava
if not defined major set "major=unknown"
echo bagwright: Java 17 or newer is needed; found version %major%.>&2
goto giveup

:nomaven
echo bagwright: the first start builds the program and needs Maven (3.8 or newer). Install it, then try again.>&2
goto giveup

:failed
type "%scratch%\log" >&2
echo bagwright: the build failed; see what Maven said above.>&2
goto giveup

:giveup
rd /s /q "%scratch%" 2>nul
rd "%lock%" 2>nul
exit /b 1

:readonly
echo bagwright: cannot build here: the folder "%home%" may not be written to.>&2
exit /b 1

:stuck
echo bagwright: still building? If nothing is, delete the folder "%lock%" and try again.>&2
exit /b 1
