/** Whether the de-identified export lets somebody who holds the full record find its people again. */
import { describe, expect, it } from 'vitest';
import { dayNumber } from '#core/time/day.ts';
import { classesOf } from '#exchange/research/classes.ts';
import { factsOf, type PersonFacts } from '#exchange/research/facts.ts';
import { attacksOn, byClassAlone, inWords } from './attacks.ts';
import { madeClinic } from './made-people.ts';

const peopleOf = (seed: number): readonly PersonFacts[] =>
  madeClinic(200, seed).map((record) => factsOf(record) as PersonFacts);

describe.each([20260301, 20260302, 20260303])('a made clinic of 200 people, seed %i', (seed) => {
  const people = peopleOf(seed);
  const outcomes = attacksOn(people);

  it('finds by the class alone no more than one in five', () => {
    console.log(`seed ${seed}: ${byClassAlone(people)}`);
    const { settled, alone } = classesOf(people);
    expect(settled.length * 5).toBeLessThanOrEqual(people.length - alone.length);
  });

  it.each(outcomes.map((outcome) => [outcome.attack, outcome] as const))(
    'by %s re-links no more than twice as well as guessing',
    (_attack, outcome) => {
      console.log(`seed ${seed}: ${inWords(outcome)}`);
      expect(outcome.of).toBeGreaterThan(0);
      expect(outcome.found).toBeLessThanOrEqual(outcome.guessed * 2);
    },
  );
});

describe('days that are only moved', () => {
  /** What the export would tell if it kept the days of sessions and moved each person's by whole weeks. */
  const gapsOf = (record: ReturnType<typeof madeClinic>[number], movedDays: number): string => {
    const days = record.rows.training_session.map(({ day }) => dayNumber(day) + movedDays);
    return days
      .slice(1)
      .map((day, at) => day - days[at]!)
      .join(' ');
  };

  it('let nearly everybody be found by the days between sessions, which is why no file has them', () => {
    const clinic = madeClinic(200, 20260301);
    const told = new Map<string, number>();
    for (const record of clinic) told.set(gapsOf(record, 700), (told.get(gapsOf(record, 700)) ?? 0) + 1);
    const found = clinic.filter((record) => told.get(gapsOf(record, 0)) === 1).length;
    console.log(`days moved by weeks alone: re-linked ${found} of ${clinic.length}`);
    expect(found).toBeGreaterThan(190);
  });
});
