/**
 * What there is to hear on a page, in its order: heading, hint, what is told, and each answer by what its button
 * says. Clocks, what is folded away and the ways back are left out.
 */

/** As much of a node of the document as is read. */
export interface ReadNode {
  readonly localName?: string | undefined;
  readonly nodeValue: string | null;
  readonly childNodes: Iterable<ReadNode>;
  readonly getAttribute?: (name: string) => string | null;
}

const leftOutClasses = ['actions-quiet', 'session-foot', 'cuff-bar', 'aloud', 'seldom'];
const leftOutTags = ['svg', 'script', 'style', 'footer', 'nav', 'input', 'textarea', 'select'];
/** Elements whose words belong to the sentence around them. */
const withinSentence = ['span', 'strong', 'em', 'b', 'time', 'bdi', 'abbr', 'small'];

const isLeftOut = (node: ReadNode): boolean => {
  const read = (name: string) => node.getAttribute?.(name) ?? null;
  const classes = (read('class') ?? '').split(' ');
  return (
    leftOutTags.includes(node.localName ?? '') ||
    (node.localName === 'details' && read('open') === null) ||
    read('hidden') !== null ||
    read('aria-hidden') === 'true' ||
    read('role') === 'timer' ||
    classes.some((name) => leftOutClasses.includes(name))
  );
};

export const pageSentences = (root: ReadNode): readonly string[] => {
  const sentences: string[] = [];
  let words: string[] = [];
  const close = () => {
    const sentence = words.join(' ').replace(/\s+/g, ' ').trim();
    if (/[\p{L}\p{N}]/u.test(sentence)) sentences.push(sentence);
    words = [];
  };
  const read = (node: ReadNode) => {
    if (node.localName === undefined) {
      if (node.nodeValue) words.push(node.nodeValue);
      return;
    }
    if (isLeftOut(node)) return;
    const isApart = !withinSentence.includes(node.localName);
    if (isApart) close();
    const label = node.localName === 'button' ? node.getAttribute?.('aria-label') : null;
    if (label) words.push(label);
    else for (const child of node.childNodes) read(child);
    if (isApart) close();
  };
  read(root);
  close();
  return sentences;
};
