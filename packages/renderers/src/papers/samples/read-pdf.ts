import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A tag of the structure tree with what it holds. */
export interface Tag {
  readonly role: string;
  readonly alternative: string | undefined;
  readonly children: readonly Tag[];
}

/** A piece of text and its box in millimetres from the upper left corner of the paper. */
export interface PlacedText {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface ReadPdf {
  readonly title: string;
  readonly language: string;
  readonly isTagged: boolean;
  readonly created: string;
  /** Width and height of each page in points. */
  readonly sizes: readonly (readonly [width: number, height: number])[];
  /** The text of each page in the order it stands in the file. */
  readonly pages: readonly string[];
  /** Where each piece of text of the first page begins. */
  readonly placed: readonly PlacedText[];
  readonly tags: readonly Tag[];
  readonly links: readonly string[];
  readonly fonts: readonly { readonly name: string; readonly isEmbedded: boolean }[];
}

function property(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined;
}

function textOf(value: unknown): string {
  return typeof value === 'string' ? value : '';
}

function tagOf(node: unknown): Tag[] {
  const role = property(node, 'role');
  if (typeof role !== 'string') return [];
  const children: unknown = property(node, 'children');
  const alternative: unknown = property(node, 'alt');
  return [
    {
      role,
      alternative: typeof alternative === 'string' ? alternative : undefined,
      children: Array.isArray(children) ? children.flatMap(tagOf) : [],
    },
  ];
}

/** All tags below, the first ones first. */
export function flatTags(tags: readonly Tag[]): Tag[] {
  return tags.flatMap((tag) => [tag, ...flatTags(tag.children)]);
}

const MM_PER_POINT = 25.4 / 72;

function placeOf(
  { str, transform, width, height }: { str: string; transform: unknown[]; width: number; height: number },
  pageHeight: number,
): PlacedText {
  // The matrix of PDF: the last two numbers are the place of the baseline from the lower left corner, in points.
  const [x, y] = transform.slice(4).map(Number);
  const left = (x ?? 0) * MM_PER_POINT;
  const baseline = (pageHeight - (y ?? 0)) * MM_PER_POINT;
  return {
    text: str,
    left,
    right: left + width * MM_PER_POINT,
    top: baseline - height * MM_PER_POINT,
    bottom: baseline,
  };
}

/** Opens a PDF with an independent reader. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  try {
    const metadata = await document.getMetadata();
    const mark = await document.getMarkInfo();
    const sizes: [number, number][] = [];
    const pages: string[] = [];
    const tags: Tag[] = [];
    const placed: PlacedText[] = [];
    const links: string[] = [];
    const fonts = new Map<string, boolean>();
    for (let number = 1; number <= document.numPages; number += 1) {
      const page = await document.getPage(number);
      const { width, height } = page.getViewport({ scale: 1 });
      sizes.push([width, height]);
      const content = await page.getTextContent();
      if (number === 1)
        for (const item of content.items)
          if ('str' in item && item.str.trim() !== '') placed.push(placeOf(item, height));
      pages.push(
        content.items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? '\n' : ''}` : '')).join(''),
      );
      tags.push(...tagOf(await page.getStructTree()));
      for (const annotation of await page.getAnnotations()) links.push(textOf(property(annotation, 'url')));
      await page.getOperatorList();
      for (const item of content.items) {
        if (!('fontName' in item)) continue;
        const font: unknown = page.commonObjs.get(item.fontName);
        fonts.set(textOf(property(font, 'name')), property(font, 'missingFile') !== true);
      }
    }
    return {
      title: textOf(property(metadata.info, 'Title')),
      language: textOf(property(metadata.info, 'Language')),
      created: textOf(property(metadata.info, 'CreationDate')),
      isTagged: mark?.Marked === true,
      sizes,
      pages,
      placed,
      tags,
      links,
      fonts: [...fonts].map(([name, isEmbedded]) => ({ name, isEmbedded })),
    };
  } finally {
    await task.destroy();
  }
}
