/**
 * Pages as one PDF file in true millimetres, black on white, with the fonts that every reader has.
 * The file asks the print box for "actual size". Same pages in, same bytes out: no date is written.
 */
import { PDFDocument, PDFName, PrintScaling, StandardFonts } from "pdf-lib";
import { MADE_BY } from "./madeBy.ts";
import type { Page } from "./page.ts";
import { type Fonts, placedOperators } from "./pdfMarks.ts";
import { points } from "./pdfPath.ts";
import { printable } from "./printWords.ts";

/**
 * Bytes of a PDF file with one page for each of `pages`, titled `title`.
 * @throws RangeError when there is no page
 * @example (await writePdf([{ size: A4, placed: [] }], "Blank")).length > 0 // true
 */
export async function writePdf(pages: readonly Page[], title: string): Promise<Uint8Array> {
  if (pages.length === 0) throw new RangeError("a PDF file needs at least one page");
  const file = await PDFDocument.create({ updateMetadata: false });
  file.setTitle(title, { showInWindowTitleBar: true });
  file.setProducer(MADE_BY);
  file.setLanguage("en");
  file.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const fonts: Fonts = {
    plain: await file.embedFont(StandardFonts.Helvetica),
    bold: await file.embedFont(StandardFonts.HelveticaBold),
  };
  for (const { size, placed } of pages) {
    const sheet = file.addPage([points(size.widthMm), points(size.heightMm)]);
    sheet.node.setFontDictionary(PDFName.of("Plain"), fonts.plain.ref);
    sheet.node.setFontDictionary(PDFName.of("Bold"), fonts.bold.ref);
    for (const one of placed) sheet.pushOperators(...placedOperators(one, fonts));
  }
  file.setSubject(
    printable(pages.flatMap((page) => page.placed.map((one) => one.drawing.sentence)).join(" ")),
  );
  // The plain form of the file, so that its producer can be read back.
  return file.save({ useObjectStreams: false });
}
