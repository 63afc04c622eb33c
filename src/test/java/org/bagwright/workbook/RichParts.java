package org.bagwright.workbook;

import java.io.IOException;
import java.nio.file.Path;
import org.bagwright.workbook.pen.RichBook;

/** What newer spreadsheet programs write and the library does not know, as parts and pieces of XML. */
public final class RichParts {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final String X14 = "xmlns:x14=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/main\"";
    private static final String NEWER = " xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\""
            + " mc:Ignorable=\"x14ac xr\""
            + " xmlns:x14ac=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac\""
            + " xmlns:xr=\"http://schemas.microsoft.com/office/spreadsheetml/2014/revision\"";
    /** A sparkline for each row and bars that the older kind of rule cannot draw. */
    private static final String EXTENSIONS = "<extLst><ext uri=\"{78C0D931-6437-407d-A8EE-F0AAD7539E65}\" " + X14
            + "><x14:conditionalFormattings><x14:conditionalFormatting"
            + " xmlns:xm=\"http://schemas.microsoft.com/office/excel/2006/main\"><x14:cfRule type=\"dataBar\""
            + " id=\"{00000000-000E-0000-0000-000001000000}\"><x14:dataBar minLength=\"0\" maxLength=\"100\"><x14:cfvo"
            + " type=\"autoMin\"/><x14:cfvo type=\"autoMax\"/></x14:dataBar></x14:cfRule><xm:sqref>B2:B4</xm:sqref>"
            + "</x14:conditionalFormatting></x14:conditionalFormattings></ext>"
            + "<ext uri=\"{05C60535-1F16-4fd2-B633-F4F36F0B64E0}\" " + X14 + "><x14:sparklineGroups"
            + " xmlns:xm=\"http://schemas.microsoft.com/office/excel/2006/main\"><x14:sparklineGroup><x14:colorSeries"
            + " rgb=\"FF376092\"/><x14:sparklines><x14:sparkline><xm:f>Plan!R8:R10</xm:f><xm:sqref>E2</xm:sqref>"
            + "</x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst>";

    static final String MACROS = "xl/vbaProject.bin";
    static final String SIGNATURE = "xl/vbaProjectSignature.bin";
    private static final String MICROSOFT = "http://schemas.microsoft.com/office/2006/relationships/";
    private static final String THREADS = "http://schemas.microsoft.com/office/2017/10/relationships/";
    private static final String THREADED = "http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments";

    private RichParts() {}

    public static void add(Path file) throws IOException {
        PartEditor editor = new PartEditor(file);
        String data = editor.old().sheet(RichBook.DATA);
        String sums = editor.old().sheet(RichBook.SUMS);
        String clubs = editor.old().sheet("Clubs");
        plainCell(editor, clubs);
        newer(editor, data);
        threads(editor, clubs);
        shared(editor, sums);
        printer(editor, data);
        linked(editor);
        custom(editor);
        theme(editor);
        calculations(editor);
        slicer(editor, data);
        editor.write();
    }

    /** Lofts by one formula shared by two cells, a cell without a format in a column that has one, and a macro's name for a sheet of the tool. */
    private static void plainCell(PartEditor editor, String clubs) {
        editor.edit(clubs, xml -> xml.replaceFirst("(<c r=\"E2\" t=\"n\") s=\"[0-9]+\"", "$1"));
        editor.edit(clubs, xml -> xml.replaceFirst(
                        "(<c r=\"B2\"[^>]*>)", "$1<f t=\"shared\" ref=\"B2:B3\" si=\"0\">33-A2*0.075</f>")
                .replaceFirst("(<c r=\"B3\"[^>]*>)", "$1<f t=\"shared\" si=\"0\"/>"));
        editor.edit(
                editor.old().sheet("Steps"),
                xml -> xml.replaceFirst("<sheetPr>", "<sheetPr codeName=\"MySteps\"><tabColor rgb=\"FF112233\"/>"));
    }

    private static void newer(PartEditor editor, String data) {
        editor.edit(data, xml -> xml.replaceFirst("<worksheet ", "<worksheet" + NEWER + " ")
                .replace("<row r=\"2\"", "<row x14ac:dyDescent=\"0.25\" r=\"2\"")
                .replace("</worksheet>", EXTENSIONS + "</worksheet>")
                .replace("<tableParts", "<TAIL/><tableParts"));
        editor.edit(data, xml -> {
            String tables = xml.substring(xml.indexOf("<TAIL/>"), xml.indexOf("<extLst>"));
            return xml.replace(tables, tables.replace("<TAIL/>", ""));
        });
    }

    private static void threads(PartEditor editor, String clubs) {
        editor.add(
                        "xl/threadedComments/threadedComment1.xml",
                        "application/vnd.ms-excel.threadedcomments+xml",
                        "<ThreadedComments xmlns=\"" + THREADED + "\"><threadedComment ref=\"C2\""
                                + " dT=\"2026-01-02T03:04:05.00\" personId=\"{00000000-0000-0000-0000-000000000001}\""
                                + " id=\"{00000000-0000-0000-0000-000000000002}\"><text>why?</text></threadedComment>"
                                + "</ThreadedComments>")
                .relate(clubs, "rIdThread", THREADS + "threadedComment", "../threadedComments/threadedComment1.xml")
                .add(
                        "xl/persons/person.xml",
                        "application/vnd.ms-excel.person+xml",
                        "<personList xmlns=\"" + THREADED + "\"><person displayName=\"Golfer A\""
                                + " id=\"{00000000-0000-0000-0000-000000000001}\" userId=\"a\" providerId=\"None\"/>"
                                + "</personList>")
                .relate("xl/workbook.xml", "rIdPerson", THREADS + "person", "persons/person.xml");
    }

    /** A formula shared by three cells, a table of what-if and a formula that spills, with its own part. */
    private static void shared(PartEditor editor, String sums) {
        editor.replace(sums, "<dimension ref=\"A1:C6\"/>", "<dimension ref=\"A1:C25\"/>");
        editor.edit(
                sums,
                xml -> xml.replaceFirst(
                        "</sheetData>",
                        "<row r=\"20\"><c r=\"A20\"><f t=\"shared\" ref=\"A20:A22\" si=\"0\">B1*3</f><v>3</v></c></row>"
                                + "<row r=\"21\"><c r=\"A21\"><f t=\"shared\" si=\"0\"/><v>6</v></c></row>"
                                + "<row r=\"22\"><c r=\"A22\"><f t=\"shared\" si=\"0\"/><v>9</v></c></row>"
                                + "<row r=\"23\"><c r=\"A23\"><f t=\"dataTable\" ref=\"A23:A24\" dt2D=\"0\" dtr=\"0\" r1=\"B1\"/>"
                                + "<v>3</v></c></row><row r=\"24\"><c r=\"A24\"><v>3</v></c></row>"
                                + "<row r=\"25\"><c r=\"A25\" cm=\"1\"><f t=\"array\" ref=\"A25\">B1:B1</f><v>1</v></c></row>"
                                + "</sheetData>"));
        editor.add(
                        "xl/metadata.xml",
                        SPREADSHEET + "sheetMetadata+xml",
                        "<metadata xmlns=\"" + MAIN
                                + "\" xmlns:xda=\"http://schemas.microsoft.com/office/spreadsheetml/"
                                + "2017/dynamicarray\"><metadataTypes count=\"1\"><metadataType name=\"XLDAPR\""
                                + " minSupportedVersion=\"120000\" copy=\"1\" cellMeta=\"1\"/></metadataTypes>"
                                + "<futureMetadata name=\"XLDAPR\" count=\"1\"><bk><extLst>"
                                + "<ext uri=\"{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}\"><xda:dynamicArrayProperties"
                                + " fDynamic=\"1\" fCollapsed=\"0\"/></ext></extLst></bk></futureMetadata>"
                                + "<cellMetadata count=\"1\"><bk><rc t=\"1\" v=\"0\"/></bk></cellMetadata></metadata>")
                .relate("xl/workbook.xml", "rIdMeta", PartEditor.OFFICE + "/sheetMetadata", "metadata.xml");
    }

    private static void printer(PartEditor editor, String data) {
        editor.replace(
                        BookPackage.CONTENT_TYPES,
                        "</Types>",
                        "<Default Extension=\"bin\" ContentType=\"" + SPREADSHEET + "printerSettings\"/></Types>")
                .put("xl/printerSettings/printerSettings1.bin", new byte[] {1, 2, 3, 0, 5})
                .relate(
                        data,
                        "rIdPrinter",
                        PartEditor.OFFICE + "/printerSettings",
                        "../printerSettings/printerSettings1.bin");
        editor.replace(data, "<pageSetup ", "<pageSetup xmlns:r=\"" + PartEditor.OFFICE + "\" r:id=\"rIdPrinter\" ");
    }

    /** A book elsewhere, with what it last said. */
    private static void linked(PartEditor editor) {
        editor.add(
                        "xl/externalLinks/externalLink1.xml",
                        SPREADSHEET + "externalLink+xml",
                        "<externalLink xmlns=\"" + MAIN + "\"><externalBook xmlns:r=\"" + PartEditor.OFFICE
                                + "\" r:id=\"rId1\"><sheetNames><sheetName val=\"Prices\"/></sheetNames><sheetDataSet>"
                                + "<sheetData sheetId=\"0\"><row r=\"1\"><cell r=\"A1\"><v>7</v></cell></row></sheetData>"
                                + "</sheetDataSet></externalBook></externalLink>")
                .relate(
                        "xl/externalLinks/externalLink1.xml",
                        "rId1",
                        PartEditor.OFFICE + "/externalLinkPath",
                        "file:///prices.xlsx")
                .relate(
                        "xl/workbook.xml",
                        "rIdLink",
                        PartEditor.OFFICE + "/externalLink",
                        "externalLinks/externalLink1.xml")
                .replace(
                        "xl/workbook.xml",
                        "<definedNames>",
                        "<externalReferences><externalReference xmlns:r=\"" + PartEditor.OFFICE
                                + "\" r:id=\"rIdLink\"/></externalReferences><definedNames>");
    }

    private static void custom(PartEditor editor) {
        editor.put("customXml/item1.xml", "<mine xmlns=\"urn:workshop\">kept</mine>")
                .add(
                        "customXml/itemProps1.xml",
                        "application/vnd.openxmlformats-officedocument.customXmlProperties+xml",
                        "<ds:datastoreItem ds:itemID=\"{00000000-0000-0000-0000-000000000003}\" xmlns:ds="
                                + "\"http://schemas.openxmlformats.org/officeDocument/2006/customXml\"/>")
                .relate("customXml/item1.xml", "rId1", PartEditor.OFFICE + "/customXmlProps", "itemProps1.xml")
                .relate("xl/workbook.xml", "rIdCustom", PartEditor.OFFICE + "/customXml", "../customXml/item1.xml");
    }

    private static void theme(PartEditor editor) {
        editor.add("xl/theme/theme1.xml", "application/vnd.openxmlformats-officedocument.theme+xml", THEME)
                .relate("xl/workbook.xml", "rIdTheme", PartEditor.OFFICE + "/theme", "theme/theme1.xml");
    }

    private static void calculations(PartEditor editor) {
        editor.add(
                        "xl/calcChain.xml",
                        SPREADSHEET + "calcChain+xml",
                        "<calcChain xmlns=\"" + MAIN + "\"><c r=\"B3\" i=\"3\"/></calcChain>")
                .relate("xl/workbook.xml", "rIdChain", PartEditor.OFFICE + "/calcChain", "calcChain.xml");
    }

    private static void slicer(PartEditor editor, String data) {
        String cache = "<slicerCacheDefinition xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/main\""
                + " name=\"Slicer_Club\" sourceName=\"Club\"><extLst><x:ext xmlns:x=\"" + MAIN
                + "\" uri=\"{2F2917AC-EB37-4324-AD4E-5DD8C200BD13}\" xmlns:x15=\"http://schemas.microsoft.com/office/"
                + "spreadsheetml/2010/11/main\"><x15:tableSlicerCache tableId=\"1\" column=\"1\"/></x:ext></extLst>"
                + "</slicerCacheDefinition>";
        editor.add("xl/slicerCaches/slicerCache1.xml", "application/vnd.ms-excel.slicerCache+xml", cache)
                .relate(
                        "xl/workbook.xml",
                        "rIdCache",
                        "http://schemas.microsoft.com/office/2007/relationships/slicerCache",
                        "slicerCaches/slicerCache1.xml")
                .add(
                        "xl/slicers/slicer1.xml",
                        "application/vnd.ms-excel.slicer+xml",
                        "<slicers xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/main\"><slicer"
                                + " name=\"Club\" cache=\"Slicer_Club\" caption=\"Club\" rowHeight=\"241300\"/></slicers>")
                .relate(
                        data,
                        "rIdSlicer",
                        "http://schemas.microsoft.com/office/2007/relationships/slicer",
                        "../slicers/slicer1.xml")
                .replace(
                        data,
                        "</extLst></worksheet>",
                        "<ext uri=\"{3A4CF648-6AED-40f4-86FF-DC5316D8AED3}\" " + X14 + "><x14:slicerList><x14:slicer"
                                + " xmlns:r=\"" + PartEditor.OFFICE + "\" r:id=\"rIdSlicer\"/></x14:slicerList></ext>"
                                + "</extLst></worksheet>")
                .replace(
                        "xl/workbook.xml",
                        "</workbook>",
                        "<extLst><ext uri=\"{46BE6895-7355-4a93-B00E-2C351335B9C9}\" xmlns:x15=\"http://schemas.microsoft"
                                + ".com/office/spreadsheetml/2010/11/main\" " + X14
                                + "><x15:slicerCaches><x14:slicerCache"
                                + " xmlns:r=\"" + PartEditor.OFFICE + "\" r:id=\"rIdCache\"/></x15:slicerCaches></ext>"
                                + "</extLst></workbook>");
    }

    private static final String THEME = "<a:theme xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\""
            + " name=\"Mine\"><a:themeElements/></a:theme>";

    /** Makes the book one with macros; the stand-in for them is kept as bytes whatever it is. */
    static void addMacros(Path file) throws IOException {
        PartEditor editor = new PartEditor(file);
        editor.replace(
                BookPackage.CONTENT_TYPES,
                SPREADSHEET + "sheet.main+xml",
                "application/vnd.ms-excel.sheet.macroEnabled.main+xml");
        editor.add(MACROS, "application/vnd.ms-office.vbaProject", "macros of his own")
                .relate("xl/workbook.xml", "rIdMacros", MICROSOFT + "vbaProject", "vbaProject.bin")
                .add(SIGNATURE, "application/vnd.ms-office.vbaProjectSignature", "signed")
                .relate(MACROS, "rId1", MICROSOFT + "vbaProjectSignature", "vbaProjectSignature.bin")
                .write();
    }
}
