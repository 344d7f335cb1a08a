/** The tree of a page written by `renderToStaticMarkup`, as far as what reads a page looks at it. */
import type { ReadNode } from '#ui/patient/aloud/page-sentences.ts';

interface Branch extends ReadNode {
  readonly localName: string;
  readonly childNodes: ReadNode[];
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#x27': "'" };
const plain = (text: string): string => text.replace(/&(#?\w+);/g, (whole, name) => entities[name] ?? whole);

const empty = ['input', 'img', 'br', 'hr', 'path', 'circle', 'line', 'rect', 'ellipse'];

const branch = (localName: string, written: string): Branch => {
  const attributes = new Map(
    [...written.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, plain(value)]),
  );
  return { localName, nodeValue: null, childNodes: [], getAttribute: (name) => attributes.get(name) ?? null };
};

export const treeOfMarkup = (markup: string): ReadNode => {
  const root = branch('main', '');
  const open = [root];
  for (const [, end, name, attributes = '', text] of markup.matchAll(
    /<(\/?)([a-z][\w-]*)((?:\s[^>]*)?)>|([^<]+)/g,
  )) {
    const here = open.at(-1)!;
    if (text !== undefined) here.childNodes.push({ nodeValue: plain(text), childNodes: [] });
    else if (end) open.pop();
    else if (name) {
      const next = branch(name, attributes);
      here.childNodes.push(next);
      if (!attributes.endsWith('/') && !empty.includes(name)) open.push(next);
    }
  }
  return root;
};
