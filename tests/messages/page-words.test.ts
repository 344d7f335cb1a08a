/** What a page says comes with the page, and nothing else does: no phone fetches the words of another page. */
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { everyLanguage } from '#messages/every-language.ts';
import { languages } from '#messages/languages.ts';
import {
  allFiles,
  codeFiles,
  importsOfTree,
  resolveImport,
  root,
  textOf,
  treeOf,
} from '#tests/architecture/repository.ts';

const keys = Object.keys(everyLanguage.en.pages);

/** Pages for patients, and the words each gives, beside those of the frame. */
const pages = [
  ['src/app/(patient)/today/page.tsx', ['day']],
  ['src/ui/patient/history/history-frame.tsx', ['history']],
  ['src/ui/patient/history/history-page.tsx', ['history']],
  ['src/ui/patient/handout/handout-frame.tsx', ['handout']],
  ['src/ui/patient/handout/handout-page.tsx', ['handout']],
  ['src/ui/patient/messages/write-frame.tsx', ['write']],
  ['src/ui/patient/messages/message-form.tsx', ['write']],
  ['src/ui/patient/pre-visit/visit-frame.tsx', ['pre-visit']],
  ['src/ui/patient/pre-visit/visit-app.tsx', ['pre-visit']],
  ['src/ui/patient/pre-visit/consents-frame.tsx', ['consents']],
  ['src/ui/patient/pre-visit/consents.tsx', ['consents']],
  ['src/ui/patient/account/access-log-frame.tsx', ['access-log']],
  ['src/ui/patient/account/access-log-list.tsx', ['access-log']],
  ['src/ui/patient/account/own-account-frame.tsx', ['account', 'own-phones']],
  ['src/ui/account/account-screen.tsx', ['account']],
  ['src/ui/patient/account/enrol-frame.tsx', ['enrol']],
  ['src/ui/patient/account/enrol-form.tsx', ['enrol']],
  ['src/ui/patient/account/pin-form.tsx', ['enrol']],
  ['src/ui/patient/account/sign-in-frame.tsx', ['sign-in']],
  ['src/ui/account/sign-in/sign-in-form.tsx', ['sign-in']],
] as const;

/** Fetched on a press, in the language that is spoken by then. */
const whenAsked = ['leaving'];

interface Reached {
  /** Of the screens and the words, everything that runs. */
  readonly files: ReadonlySet<string>;
  /** Words that are fetched by language, by their file: "history". */
  readonly fetched: ReadonlySet<string>;
}

const reachedFrom = (start: string): Reached => {
  const [files, fetched] = [new Set([start]), new Set<string>()];
  for (const file of files) {
    for (const { from, isType } of importsOfTree(treeOf(file))) {
      const target = isType ? null : resolveImport(file, from);
      if (target === null || !/^src\/(ui|messages)\/.*\.tsx?$/.test(target)) continue;
      files.add(target);
      const page = /^src\/messages\/de\/pages\/([a-z-]+)\.ts$/.exec(target)?.[1];
      if (page && file.startsWith('src/ui/')) fetched.add(page);
    }
  }
  return { files, fetched };
};

const literalKeys = (file: string): readonly string[] =>
  [...textOf(file).matchAll(/'([a-z-]+\.[a-z0-9.-]+)'/g)].flatMap(([, key = '']) =>
    keys.includes(key) ? [key] : [],
  );

/** `flag.${flag}` may be any key that begins so. */
const shapes = (file: string): readonly RegExp[] =>
  [...textOf(file).matchAll(/`([a-z-]+\.[^`\s]*\$\{[^`]*)`/g)].map(
    ([, text = '']) => new RegExp(`^${text.split(/\$\{[^}]*\}/).join('[a-z0-9-]+')}$`),
  );

const screens = (files: Iterable<string>) => [...files].filter((file) => file.startsWith('src/ui/'));

const wordsOf = async (tag: string, page: string): Promise<readonly string[]> => {
  const file = path.join(root, 'src', 'messages', tag, 'pages', `${page}.ts`);
  return Object.keys(((await import(file)) as { readonly words: object }).words);
};

describe('the words of a page', () => {
  it.each(pages)('%s fetches those of %j and of the frame alone', (start, own) => {
    const { files, fetched } = reachedFrom(start);
    expect([...fetched].filter((page) => page !== 'frame' && !whenAsked.includes(page))).toEqual(own);
    expect([...files].filter((file) => /^src\/messages\/[a-z]+\/sentences\//.test(file))).toEqual([]);
  });

  it.each(pages)('%s says nothing that %j and the frame lack, in any language', async (start, own) => {
    const said = new Set(screens(reachedFrom(start).files).flatMap(literalKeys));
    for (const { tag } of languages.filter((one) => one.tag !== 'en')) {
      const there = (
        await Promise.all(['frame', ...whenAsked, ...own].map((page) => wordsOf(tag, page)))
      ).flat();
      expect([...said].filter((key) => !there.includes(key))).toEqual([]);
    }
  });

  it('are each said somewhere', () => {
    const files = [
      ...codeFiles('src/ui', 'src/app'),
      'src/messages/invitation-slips.ts',
      'src/messages/doses.ts',
      'src/messages/figures.ts',
      'src/papers/plan/plan-data.ts',
      'src/server/http/worker-script.ts',
    ];
    const said = new Set(files.flatMap(literalKeys));
    const begun = files.flatMap(shapes);
    expect(keys.filter((key) => !said.has(key) && !begun.some((shape) => shape.test(key)))).toEqual([]);
  });

  it('stand for every page that has a frame', () => {
    const frames = allFiles().filter((file) => /^src\/ui\/patient\/.+\/[a-z-]+-frame\.tsx$/.test(file));
    const named: readonly string[] = [...pages.map(([file]) => file), 'src/ui/patient/today/day-frame.tsx'];
    expect(frames.filter((file) => !named.includes(file))).toEqual([]);
  });
});
