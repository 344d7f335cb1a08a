/**
 * The guide of an appointment at a distance. Which parts can be judged by video or telephone is common practice, no
 * source; what is held here is what the guide never lets through.
 */
import { describe, expect, it } from 'vitest';
import type { LimitInForce } from '#core/decision/dose/limits.ts';
import { guideFor, notAtADistance, partsOfGuide } from '#core/episode/distance/guide.ts';
import { findingsFrom, guideRefusals } from '#core/episode/distance/guide-fields.ts';
import { isRemote, visitPlaces } from '#core/episode/remote-visit.ts';
import { joints } from '#core/exercises/joints.ts';

const limit = (changed: Partial<LimitInForce>): LimitInForce => ({
  joint: 'right-knee',
  kind: 'range',
  limitKg: null,
  from: '2026-03-02',
  to: null,
  author: 'Dr Vance',
  isExpired: false,
  ...changed,
});
const lockedIn = (joint: (typeof joints)[number], ...limits: readonly LimitInForce[]) =>
  guideFor(joint, 'video', limits).flatMap(({ part, locked }) => (locked ? [part] : []));

describe('the guide of an appointment at a distance', () => {
  it('is there for every joint by video and telephone, and for no meeting in person', () => {
    const wrong = joints.flatMap((joint) =>
      visitPlaces.filter(
        (place) => guideFor(joint, place, []).length !== (isRemote(place) ? partsOfGuide.length : 0),
      ),
    );
    expect(wrong).toEqual([]);
    expect(notAtADistance.length).toBeGreaterThan(0);
  });

  it('says nothing of a camera by telephone, and nobody has seen anything there', () => {
    const byTelephone = joints.flatMap((joint) => guideFor(joint, 'telephone', []));
    expect(byTelephone.filter(({ camera, ways }) => camera !== null || ways.includes('seen'))).toEqual([]);
    expect(guideFor('left-knee', 'video', []).every(({ ways }) => ways.includes('seen'))).toBe(true);
  });

  it('asks for no weight on a limb while weight-bearing is limited anywhere, and goes on with the rest', () => {
    const bearing = limit({ kind: 'weight-bearing', joint: 'left-ankle' });
    expect(lockedIn('right-knee', bearing)).toEqual(['task']);
    expect(lockedIn('right-wrist', bearing)).toEqual([]);
    expect(lockedIn('right-knee')).toEqual([]);
  });

  it('moves no joint whose range is limited, and that joint alone', () => {
    expect(lockedIn('right-knee', limit({}))).toEqual(['move', 'task']);
    expect(lockedIn('left-knee', limit({}))).toEqual([]);
    expect(lockedIn('right-knee', limit({ kind: 'load-limit', limitKg: 3 }))).toEqual([]);
    const [, , move] = guideFor('right-knee', 'video', [limit({})]);
    expect(move).toMatchObject({ locked: 'The range is limited by Dr Vance.' });
  });

  it('takes no part as judged without what was found, and any part as not done', () => {
    const row = { lookBy: 'seen', lookFound: null, pressBy: 'not-done', moveBy: 'told', moveFound: 'Stiff.' };
    expect(guideRefusals({ ...row, taskBy: 'not-done' }).map(({ field }) => field)).toEqual([
      'input.lookFound',
    ]);
    const free = partsOfGuide.map((part) => ({ part, locked: null }));
    expect(findingsFrom({ ...row, taskBy: 'not-done' }, free)[3]).toEqual({
      part: 'task',
      by: 'not-done',
      found: null,
    });
  });

  it('keeps what a limit leaves out as not done, with the limit, whatever was sent', () => {
    const steps = guideFor('right-knee', 'video', [limit({})]);
    const sent = {
      lookBy: 'not-done',
      pressBy: 'not-done',
      moveBy: 'seen',
      moveFound: 'Free.',
      taskBy: 'seen',
    };
    expect(findingsFrom(sent, steps).slice(2)).toEqual([
      { part: 'move', by: 'not-done', found: 'The range is limited by Dr Vance.' },
      { part: 'task', by: 'not-done', found: 'The range is limited by Dr Vance.' },
    ]);
  });
});
