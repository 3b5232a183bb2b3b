import { PDFDocument, PDFName, type PDFPage, PDFString, PrintScaling } from '@cantoo/pdf-lib';
import { embedFonts, type FontFiles, type PrintFonts } from './pdf-fonts.ts';
import { printLayers } from './pdf-marks.ts';
import { pointsPerMillimetre } from './pdf-numbers.ts';

/** A PDF being written, page by page. */
export interface PdfFile {
  readonly fonts: PrintFonts;
  /** Adds a page of this size, in millimetres, that carries these content-stream operators. */
  addPage(width: number, height: number, operators: string): void;
  bytes(): Promise<Uint8Array>;
}

/**
 * Opens a PDF with its layers as optional-content groups (ISO 32000-1, 8.11), its two fonts, and a request to
 * the reader's program to print without scaling. Carries no dates, so the same print is the same bytes.
 */
export const openPdf = async (details: {
  readonly title: string;
  readonly subject: string;
  readonly fonts: FontFiles;
  readonly fontkit: unknown;
}): Promise<PdfFile> => {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.setTitle(details.title, { showInWindowTitleBar: true });
  document.setSubject(details.subject);
  document.setCreator('Easewright');
  document.setProducer('Easewright');
  document.setLanguage('en');
  document.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const fonts = await embedFonts(document, details.fontkit, details.fonts);
  const layers = addLayers(document);

  return {
    fonts,
    addPage: (width, height, operators) => {
      const page = document.addPage([width * pointsPerMillimetre, height * pointsPerMillimetre]);
      nameResources(page, fonts, layers);
      page.node.addContentStream(document.context.register(document.context.flateStream(operators)));
    },
    bytes: () => document.save(),
  };
};

type LayerRefs = ReadonlyMap<string, ReturnType<PDFDocument['context']['register']>>;

const addLayers = (document: PDFDocument): LayerRefs => {
  const { context } = document;
  const layers: LayerRefs = new Map(
    printLayers.map((name) => [
      name,
      context.register(context.obj({ Type: 'OCG', Name: PDFString.of(name), Intent: 'View' })),
    ]),
  );
  const all = [...layers.values()];
  document.catalog.set(
    PDFName.of('OCProperties'),
    context.obj({ OCGs: all, D: { Name: PDFString.of('layers'), Order: all, ON: all, BaseState: 'ON' } }),
  );
  return layers;
};

const nameResources = (page: PDFPage, fonts: PrintFonts, layers: LayerRefs): void => {
  page.node.setFontDictionary(PDFName.of('regular'), fonts.regular.ref);
  page.node.setFontDictionary(PDFName.of('bold'), fonts.bold.ref);
  const resources = page.node.normalizedEntries().Resources;
  resources.set(PDFName.of('Properties'), page.doc.context.obj(Object.fromEntries(layers)));
};
