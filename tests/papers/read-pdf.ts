/** A paper read back by an outside reader: its text, its tag tree, and what of it stands outside the tree. */
import path from 'node:path';
import { getDocument, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface Tag {
  readonly role: string;
  readonly text: string;
  readonly alt: string | null;
  readonly children: readonly Tag[];
}

export interface ReadPdf {
  readonly pages: number;
  readonly language: string | null;
  readonly title: string | null;
  readonly metadata: string;
  /** Millimetres. */
  readonly size: readonly [wide: number, high: number];
  /** The text of each page, one space between its pieces, without what stands at its edge and nobody hears. */
  readonly text: readonly string[];
  /** Each run of letters with its size in points. */
  readonly runs: readonly { readonly text: string; readonly pt: number }[];
  /** What stands on each page and is no content: its footer, a mark across it. */
  readonly edges: readonly string[];
  readonly tags: readonly Tag[];
  /** Marks on the paper that are neither in the tree nor said to be no content. */
  readonly untagged: readonly string[];
}

interface StructNode {
  readonly role?: string;
  readonly alt?: string;
  readonly id?: string;
  readonly children?: readonly StructNode[];
}

const oneSpace = (text: string): string => text.replaceAll('\u200b', '').replace(/\s+/g, ' ').trim();

const markOf = (item: object): string | null => {
  const { id, tag } = item as { readonly id?: string; readonly tag?: string };
  return id ?? (tag === 'Artifact' ? 'artifact' : null);
};

/** Text by the id of its marked content; what stands in none is collected apart. */
const piecesOf = async (page: PDFPageProxy) => {
  const byId = new Map<string, string>();
  const loose: string[] = [];
  const open: (string | null)[] = [];
  const runs: { text: string; pt: number }[] = [];
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  for (const item of items) {
    if ('type' in item) {
      if (item.type === 'endMarkedContent') open.pop();
      else open.push(markOf(item));
      continue;
    }
    runs.push({ text: item.str, pt: Math.round(item.height * 10) / 10 });
    const id = open.findLast((one) => one !== null);
    if (id === undefined || id === null) loose.push(item.str);
    else byId.set(id, `${byId.get(id) ?? ''}${item.str}${item.hasEOL ? ' ' : ''}`);
  }
  return { byId, runs, loose: loose.filter((text) => text.trim() !== '') };
};

const tagOf = (node: StructNode, byId: ReadonlyMap<string, string>, seen: Set<string>): Tag => {
  const children: Tag[] = [];
  let text = '';
  for (const child of node.children ?? []) {
    if (child.role) children.push(tagOf(child, byId, seen));
    else if (child.id) {
      seen.add(child.id);
      text += byId.get(child.id) ?? '';
    }
  }
  return { role: node.role ?? '', text: oneSpace(text), alt: node.alt ?? null, children };
};

const painting = new Set<number>([
  OPS.fill,
  OPS.eoFill,
  OPS.stroke,
  OPS.fillStroke,
  OPS.eoFillStroke,
  OPS.showText,
  OPS.paintImageXObject,
  OPS.constructPath,
]);

const strayMarksOf = async (page: PDFPageProxy): Promise<readonly string[]> => {
  const { fnArray } = await page.getOperatorList();
  let depth = 0;
  let stray = 0;
  for (const name of fnArray) {
    if (name === OPS.beginMarkedContent || name === OPS.beginMarkedContentProps) depth += 1;
    else if (name === OPS.endMarkedContent) depth -= 1;
    else if (painting.has(name) && depth === 0) stray += 1;
  }
  return stray > 0 ? [`${stray} marks outside the tree`] : [];
};

const readPage = async (page: PDFPageProxy) => {
  const { byId, runs, loose } = await piecesOf(page);
  const seen = new Set<string>(['artifact']);
  const tree = (await page.getStructTree()) as StructNode | null;
  const tag = tree ? tagOf(tree, byId, seen) : null;
  const unseen = [...byId]
    .filter(([id, text]) => !seen.has(id) && text.trim() !== '')
    .map(([, text]) => text);
  return {
    tag,
    runs,
    text: oneSpace([...byId].flatMap(([id, text]) => (id === 'artifact' ? [] : [text])).join(' ')),
    edge: oneSpace(byId.get('artifact') ?? ''),
    untagged: [...loose, ...unseen, ...(await strayMarksOf(page))],
  };
};

const lettersOfReader = `${path.join(process.cwd(), 'node_modules', 'pdfjs-dist', 'standard_fonts')}/`;

export const readPdf = async (pdf: Uint8Array): Promise<ReadPdf> => {
  const task = getDocument({
    // The reader keeps what it is given for itself.
    data: new Uint8Array(pdf),
    useSystemFonts: false,
    standardFontDataUrl: lettersOfReader,
    verbosity: 0,
  });
  const document = await task.promise;
  const pages = [];
  for (let at = 1; at <= document.numPages; at++) pages.push(await readPage(await document.getPage(at)));
  const { info, metadata } = await document.getMetadata();
  const [left = 0, bottom = 0, right = 0, top = 0] = (await document.getPage(1)).view;
  const size = [right - left, top - bottom].map((points) => Math.round((points * 25.4) / 72));
  const read: ReadPdf = {
    pages: document.numPages,
    language: (info as { Language?: string }).Language ?? null,
    title: (info as { Title?: string }).Title ?? null,
    metadata: metadata?.getRaw() ?? '',
    size: [size[0]!, size[1]!],
    text: pages.map(({ text }) => text),
    runs: pages.flatMap(({ runs }) => runs),
    edges: pages.map(({ edge }) => edge),
    tags: pages.flatMap(({ tag }) => tag ?? []),
    untagged: pages.flatMap(({ untagged }) => untagged),
  };
  await task.destroy();
  return read;
};

/** Every tag of a role, in the order of reading. */
export const tagsOf = (tags: readonly Tag[], role: RegExp): readonly Tag[] =>
  tags.flatMap((tag) => [...(role.test(tag.role) ? [tag] : []), ...tagsOf(tag.children, role)]);

/** The text of a tag with all that stands in it. */
export const wholeText = (tag: Tag): string => oneSpace([tag.text, ...tag.children.map(wholeText)].join(' '));
