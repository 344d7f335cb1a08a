/** Screens for staff hold no sentence of their own: what they say stands by key in src/messages/en/staff. */
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { staff } from '#messages/en/staff.ts';
import { staffRows } from '#messages/sentence-rows.ts';
import {
  childrenOf,
  codeFiles,
  importGraph,
  lineOf,
  type Node,
  parse,
  textOf,
  treeOf,
} from '#tests/architecture/repository.ts';

/** Read by programs or by whoever runs them, on no screen. */
const noScreens = /^src\/app\/(.*\/route\.ts|manifest\.ts|layout\.tsx)$/;

const severalWords = /\p{L}{2,}\S*\s(?:.*\s)?\S*\p{L}{2,}/su;
/** In a template even one word is a piece of a sentence, where a space stands beside it. */
const wordBesideSpace = /\s\S*\p{L}{2,}|\p{L}{2,}\S*\s/u;

/** Types, directives, what is thrown, and what the browser alone reads. */
const isUnread = ({ type, name, key, directive }: Node): boolean => {
  if (/^(TS(?!As|Satisfies|NonNull)|Import|ThrowStatement$)/.test(type) || directive) return true;
  const called = (type === 'JSXAttribute' ? name : type === 'Property' ? key : null) as Node | null;
  return ['className', 'd', 'viewBox', 'transform'].includes(String(called?.name));
};

const textIn = (node: Node): string | null => {
  if (node.type === 'JSXText' || node.type === 'Literal') {
    return severalWords.test(String(node.value)) ? String(node.value) : null;
  }
  if (node.type !== 'TemplateLiteral') return null;
  const parts = (node.quasis as { value: { raw: string } }[]).map(({ value }) => value.raw);
  return parts.some((part) => wordBesideSpace.test(part)) ? parts.join('…') : null;
};

const sentencesIn = (node: Node): readonly { readonly at: number; readonly text: string }[] => {
  if (isUnread(node)) return [];
  const text = textIn(node)?.replace(/\s+/g, ' ').trim();
  return [...(text ? [{ at: node.start, text }] : []), ...childrenOf(node).flatMap(sentencesIn)];
};

const folders = ['src/ui/clinician', 'src/ui/admin', 'src/ui/account', 'src/app'];
const screens = codeFiles(...folders).filter(
  (file) => !file.startsWith('src/app/(patient)/') && !noScreens.test(file),
);

const sentencesOf = (file: string): readonly string[] =>
  sentencesIn(treeOf(file)).map(({ at, text }) => `${file}:${lineOf(file, at)}: ${text}`);

describe('a screen for staff', () => {
  it('holds no sentence of its own', () => {
    expect(screens.flatMap(sentencesOf)).toEqual([]);
  });

  it.each([
    ['const a = <p>Two words</p>;', ['Two words']],
    ['const a = <p>\n  Over {2} lines\n  of text\n</p>;', ['lines of text']],
    ['const a = <p title="Two words" className="two words">Word</p>;', ['Two words']],
    ["const a = { label: 'Two words', name: 'word', className: 'two words' };", ['Two words']],
    [`const a = \`until \${b}\`;`, ['until …']],
    [`const a = \`until-\${b} \${c}\`;`, []],
    ["'use client';\nimport a from 'two words';\ntype B = 'two words';", []],
    ["if (a) throw new Error('two words');", []],
  ])('would be found out: %s', (text, found) => {
    expect(sentencesIn(parse(text, 'x.tsx')).map((one) => one.text)).toEqual(found);
  });
});

describe('the words of the staff screens', () => {
  const graph = importGraph('src/ui', 'src/app', 'src/papers', 'src/api');
  const saidOf = (place: string): string =>
    [...graph]
      .filter(([, targets]) => targets.includes(`src/messages/en/staff/${place}.ts`))
      .map(([file]) => textOf(file))
      .join('\n');

  it('are listed, a file a place', () => {
    const files = codeFiles('src/messages/en/staff').map((file) =>
      path.relative('src/messages/en/staff', file).replace(/\.ts$/, ''),
    );
    expect(Object.keys(staff).sort()).toEqual(files.sort());
  });

  it('are each said by a screen of their place', () => {
    const unsaid = Object.entries(staff).flatMap(([place, words]) => {
      const said = saidOf(place);
      // `group.${group}` may be any key that begins so.
      const begun = [...said.matchAll(/`([a-z][a-z0-9.-]*)\$\{/g)].map(([, start = '']) => start);
      return Object.keys(words)
        .filter((key) => !said.includes(`'${key}'`) && !begun.some((start) => key.startsWith(start)))
        .map((key) => `${place}.${key}`);
    });
    expect(unsaid).toEqual([]);
  });

  it('begin and end with no space', () => {
    expect(staffRows.filter(({ text }) => text !== text.trim())).toEqual([]);
  });

  it('have no slot that a patient’s sentence would write in a form of its language', () => {
    expect(staffRows.filter(({ text }) => /\{(joint|limb|day)[:}]/.test(text))).toEqual([]);
  });
});
