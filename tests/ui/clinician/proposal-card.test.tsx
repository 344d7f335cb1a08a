/** The card of a proposed dose: what it changes in all, and in the easier session, stands open. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { kneeDose } from '#tests/core/decision/small-record.ts';
import type { Proposed } from '#ui/clinician/answers.ts';
import { usualPainUnknown } from '#ui/clinician/first-visit/exercise-step.tsx';
import { CardLines } from '#ui/clinician/prescribing/card-lines.tsx';
import { ProposalCard } from '#ui/clinician/prescribing/proposal-card.tsx';

const band = (low: number, high: number) => ({ repetitions: { low, high } });
const card = (dose: Dose, badDay: Dose = kneeDose, before: Dose = kneeDose, beside: readonly Dose[] = []) => {
  const proposed = { dose, badDay, joints: ['left-knee'], cautions: [], notes: [], working: [] };
  const html = renderToStaticMarkup(
    <ProposalCard
      proposed={proposed as unknown as Proposed}
      inForce={{ dose: before, badDay: kneeDose, cautions: [] } as never}
      beside={beside}
      held={[]}
    />,
  );
  return html.split('<details')[0]!;
};
const inAll = /Repetitions, sets and load together: (\d+) % more/;
const fifty = { ...kneeDose, ...band(50, 50), sets: 2 } as Dose;

it('says of a joint it is monitored by that its usual pain is not known, and of no other', () => {
  const of = (joints: readonly Joint[]) =>
    renderToStaticMarkup(
      <CardLines
        proposed={{ dose: kneeDose, badDay: kneeDose, joints: ['left-knee'], notes: [] } as never}
        inForce={null}
        beside={[]}
        held={[]}
        usualPainUnknown={joints}
      />,
    );
  expect(of(['left-knee'])).toContain('Usual pain not known: left knee.');
  expect(of(['right-knee'])).not.toContain('Usual pain');
  expect(of([])).not.toContain('Usual pain');
  const followed = { followedJoints: ['left-knee', 'right-knee'] };
  const baselines = [
    { joint: 'left-knee', usualPain: 3 },
    { joint: 'right-knee', usualPain: null },
  ];
  expect(usualPainUnknown({ profile: followed, baselines } as never)).toEqual(['right-knee']);
});

it('names what repetitions, sets and load come to together, over a tenth: 8, 10 and 12 %', () => {
  const of = (high: number) =>
    inAll.exec(card({ ...fifty, ...band(high, high) } as Dose, kneeDose, fifty))?.[1];
  expect([54, 55, 56].map(of)).toEqual([undefined, undefined, '12']);
});

it('names an easier session that is another one than the one in force, also where the dose is the same', () => {
  const html = card(kneeDose, { ...kneeDose, sets: 1 } as Dose);
  expect(html).toContain('The easier session changes too: 1 × ');
  expect(card(kneeDose)).not.toContain('easier session changes');
});

it('names with care what asks more: effort, rest, and a week by its sessions', () => {
  const now = kneeDose.sessionsPerWeek;
  const html = card({ ...kneeDose, reserve: 0, restSeconds: 30, sessionsPerWeek: now + 2 } as Dose);
  for (const what of ['Left in reserve', 'Rest', 'Sessions a week'])
    expect(html).toMatch(new RegExp(`card-care[^]*?${what}: [^<]*which asks more`));
  expect(html).toContain('In a week, with the sessions added: ');
  expect(card({ ...kneeDose, sessionsPerWeek: now - 1 } as Dose)).not.toMatch(/asks more|In a week/);
});

it('names the same exercise in force by another method, and says what to do', () => {
  const beside = { ...kneeDose, loadKg: 2 } as Dose;
  expect(card(kneeDose, kneeDose, kneeDose, [beside])).toMatch(
    /In force beside it, and done as well: [^<]*2 kg[^<]*end the other/,
  );
});

it('once signed is no longer headed as a proposal', () => {
  const proposed = { dose: kneeDose, badDay: kneeDose, joints: [], cautions: [], notes: [], working: [] };
  const headOf = (isSigned: boolean) =>
    renderToStaticMarkup(
      <ProposalCard
        proposed={proposed as unknown as Proposed}
        inForce={null}
        beside={[]}
        held={[]}
        isSigned={isSigned}
      />,
    );
  expect(headOf(true)).toContain('>Signed · ');
  expect(headOf(true)).not.toContain('Proposed');
  expect(headOf(false)).toContain('>Proposed, to be signed · ');
});
