/** Ten invented people over a year, looked at by the engine alone, against what a physiotherapist expects. */
import { describe, expect, it } from 'vitest';
import { shareOf } from '#core/decision/dose/volume.ts';
import { followAYear, type LookOfDay, type Year } from '#demo/long-stories/follow-a-year.ts';
import type { LongStory } from '#demo/long-stories/long-story.ts';
import { longStories } from '#demo/long-stories/ten.ts';

const years = new Map<string, Year>();
const yearOf = (story: LongStory): Year => {
  const known = years.get(story.id) ?? followAYear(story);
  years.set(story.id, known);
  return known;
};

/** What stands at midday: the last look up to that morning. */
const standingOn = (year: Year, day: number): LookOfDay =>
  year.looks.filter((look) => look.day < day || (look.day === day && look.at === 'morning')).at(-1)!;

const against = (story: LongStory, year: Year): LongStory['endsAt'] => {
  const share = shareOf(year.present.dose, story.dose)!;
  return share > 1 ? 'above' : share < 1 ? 'below' : 'same';
};

describe.each(longStories.map((story) => [story.id, story] as const))('%s', (_, story) => {
  it.each(story.expected.map((one) => [one.day, one.decision, one.why] as const))(
    'day %i: %s. %s',
    (day, decision) => {
      const dispute = story.disagreements.find((one) => one.day === day);
      if (dispute) expect(dispute.expected).toBe(decision);
      expect(standingOn(yearOf(story), day).answers.decision).toBe(dispute ? dispute.engine : decision);
    },
  );

  it(`ends the year ${story.endsAt} its start`, () => {
    expect(against(story, yearOf(story))).toBe(story.endsAt);
  });

  it('never proposes a load that is not owned', () => {
    const { looks } = yearOf(story);
    const seen = looks.flatMap(({ inForce, waits }) => (waits ? [inForce, waits] : [inForce]));
    const strange = seen.filter(
      (dose) => dose.method !== 'variation' && !story.ownedLoadsKg.includes(dose.loadKg),
    );
    expect(strange).toEqual([]);
  });

  it('every disagreement is about something expected, and says why', () => {
    for (const one of story.disagreements) {
      expect(story.expected.map(({ day, decision }) => [day, decision])).toContainEqual([
        one.day,
        one.expected,
      ]);
      expect(one.engine).not.toBe(one.expected);
      expect(one.why.length).toBeGreaterThan(40);
    }
  });
});

describe('the long stories', () => {
  it('are ten, and the same year is told twice alike', () => {
    expect(longStories).toHaveLength(10);
    const story = longStories[1]!;
    expect(followAYear(story).looks).toEqual(yearOf(story).looks);
  });
});
