#!/bin/sh
# Starts the program of the image on Linux.
set -eu

self=$0
while [ -h "$self" ]; do
    link=$(readlink "$self")
    case $link in
        /*) self=$link ;;
        *) self=$(dirname "$self")/$link ;;
    esac
done
home=$(cd "$(dirname "$self")/.." && pwd -P)

# Without a language set, Java knows no letters beyond ASCII in the names of files.
case $(locale charmap 2>/dev/null || true) in
    "" | *ASCII* | ANSI_X3.4* | 646)
        LC_ALL=C.UTF-8
        export LC_ALL
        ;;
esac

exec "$home/lib/bagwright" "$@"
