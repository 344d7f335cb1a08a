/**
 * The repository speaks of the clinic and of its own workings, never of how or by whom it was
 * written, of one machine, or of the place its packages came from.
 */
import { describe, expect, it } from 'vitest';
import { allFiles, textOf } from './repository.ts';

/** Written in pieces, so that this file does not find itself. */
const word = (...parts: string[]) => new RegExp(`\\b${parts.join('')}\\b`, 'i');

const unwanted: readonly (readonly [string, RegExp])[] = [
  ['a writing machine', word('cla', 'ude')],
  ['a writing machine', word('anth', 'ropic')],
  ['a writing machine', word('chat', 'gpt')],
  ['a writing machine', word('open', 'ai')],
  ['a writing machine', word('co', 'pilot')],
  ['a writing machine', word('l', 'lm', 's?')],
  ['a writing machine', word('language ', 'model', 's?')],
  ['a writing machine', word('artificial ', 'intelligence')],
  ['a writing machine', word('(generated|written|made) (by|with) (an? )?a', 'i')],
  ['a writing machine', word('a', 'i[- ](generated|written|assisted)')],
  ['a way of working', word('evidence ', 'sheets?')],
  ['a way of working', word('sub', 'agents?')],
  [
    'a path of one machine',
    new RegExp(`(^|[\\s'"\`(=])/(wo${'rk'}|ro${'ot'}|ho${'me'}/[a-z]+|Us${'ers'}/[a-z]+)/`),
  ],
  ['a path of one machine', new RegExp(`\\.\\./sha${'red'}/(evidence|design|engine|architecture|stack)`)],
  ['a path of one machine', new RegExp(`/tmp/${'br'}ief`)],
  ['a registry', new RegExp(`registry\\.(npm${'js'}|yarn${'pkg'})`)],
  ['a registry', new RegExp(`"res${'olved'}":\\s*"http`)],
];

const isText = (file: string) => !/\.(png|jpe?g|webp|ico|woff2?|sqlite|pdf|gz|zip)$/.test(file);

const findings = (text: string): readonly string[] =>
  unwanted.flatMap(([what, pattern]) => {
    const hit = pattern.exec(text);
    return hit ? [`${what}: "${hit[0].trim()}"`] : [];
  });

describe('nothing in the repository tells of how it came to be', () => {
  it('in any file', () => {
    const found = allFiles()
      .filter(isText)
      .flatMap((file) => findings(textOf(file)).map((finding) => `${file}: ${finding}`));
    expect(found).toEqual([]);
  });

  it('would find such a word', () => {
    expect(findings(`made with ${'A'}I`)).toHaveLength(1);
    expect(findings(`see /wo${'rk'}/main/x`)).toHaveLength(1);
    expect(findings('The physiotherapy assistant works in the root canal of email@demo.invalid')).toEqual([]);
  });
});
