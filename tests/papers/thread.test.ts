/** The process goes on while a paper is set, and a paper that cannot be set costs no other. */
import { expect, it } from 'vitest';
import { recordSheet } from '#papers/record/record-sheet.ts';
import { printSheet } from '#papers/sheet/print-sheet.ts';
import { typeset } from '#papers/typesetting/typeset.ts';
import { look } from './plan-papers.ts';
import { record } from './sheet-papers.ts';

const sheet = recordSheet(record(), look);

it('answers whoever asks in the meantime', async () => {
  const order: string[] = [];
  const paper = printSheet(sheet, look).then(() => order.push('paper'));
  await new Promise((answered) => setImmediate(answered));
  order.push('answered');
  await paper;
  expect(order).toEqual(['answered', 'paper']);
});

it('refuses what cannot be set, and sets the next', async () => {
  const nothing = { title: 'A', author: 'B', sayUnprintable: (names: string) => names };
  const [broken, next] = await Promise.allSettled([
    typeset('no-such-template', nothing, look, { pt: [11], mostPages: 1 }),
    printSheet(sheet, look),
  ]);
  expect(broken.status).toBe('rejected');
  expect(next.status).toBe('fulfilled');
});
