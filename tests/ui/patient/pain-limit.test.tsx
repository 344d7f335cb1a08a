/** Every patient reads the pain that is all right before a session and in it. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import { asTyped } from '#messages/text.ts';
import { dayState } from '#ui/patient/day-state.ts';
import { SessionScreen } from '#ui/patient/session/session-screen.tsx';
import { TodayPage } from '#ui/patient/today/today-page.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { begin } from './session-play.ts';
import { exercise, today, weightDose } from './views.ts';

const nothing = () => undefined;
const lookup = (over: Partial<PainLookup> = {}): PainLookup => ({
  joint: 'right-knee',
  byPain: Array.from({ length: 11 }, () => 'as-planned'),
  whenUnknown: 'as-planned',
  acceptablePainLimit: 6,
  ...over,
});
const viewWith = (painLookups: readonly PainLookup[]) =>
  today({ painLookups, exercises: [exercise('weight', weightDose)] });

const todayPage = (painLookups: readonly PainLookup[]) =>
  renderToStaticMarkup(
    <TodayPage
      view={viewOnDay(viewWith(painLookups), '2026-03-09')}
      runningSince={null}
      state={dayState(viewWith(painLookups), [], 0)}
      isReady
      onStart={nothing}
      onResume={nothing}
      onMorning={nothing}
      onPain={nothing}
      onChangeMorning={nothing}
      onTwoHours={nothing}
    />,
  );
const sessionPage = (step: string, painLookups: readonly PainLookup[]) =>
  sessionOf(viewWith(painLookups), step);

const sessionOf = (view: ReturnType<typeof today>, step: string) =>
  renderToStaticMarkup(
    <SessionScreen
      draft={{ ...begin(view), step }}
      clinic={today().clinic}
      hasCuff={false}
      asksPregnancy={false}
      clock={() => 1_000_000}
      send={nothing}
      arrival="kept"
      onHome={nothing}
    />,
  );

const sentence = 'Pain in your right knee up to 6 of 10 is allowed. Over 6: stop.';

describe('the acceptable pain limit', () => {
  it('stands on today’s page before the start', () => {
    const page = todayPage([lookup()]);
    expect(page.indexOf(sentence)).toBeGreaterThan(0);
    expect(page.indexOf(sentence)).toBeLessThan(page.indexOf('Start the session'));
  });

  it('stands at each exercise that loads the joint, and sways no answer about the highest pain', () => {
    expect(sessionPage('item:0', [lookup()])).toContain(sentence);
    expect(sessionPage('during:right-knee', [lookup()])).not.toContain('is allowed');
    expect(sessionPage('item:0', [lookup({ joint: 'left-hip' })])).not.toContain('is allowed');
  });

  it('is said once of all joints it is the same for', () => {
    const page = todayPage([
      lookup(),
      lookup({ joint: 'left-hip', acceptablePainLimit: 5 }),
      lookup({ joint: 'left-knee' }),
    ]);
    expect(page).toContain(
      'Pain in your right knee and in your left knee up to 6 of 10 is allowed. Over 6: stop.',
    );
    expect(page).toContain('Pain in your left hip up to 5 of 10 is allowed. Over 5: stop.');
    expect(page.match(/is allowed/g)).toHaveLength(2);
  });

  it('is not said of the pain before the work, which eases a session by other numbers', () => {
    expect(sessionPage('before:right-knee', [lookup()])).not.toContain('is allowed');
  });

  it('says nothing on a page kept by an earlier release, which does not know it', () => {
    const { acceptablePainLimit: _limit, ...old } = lookup();
    expect(todayPage([old])).not.toContain('is allowed');
    expect(sessionPage('during:right-knee', [old])).not.toContain('is allowed');
  });
});

describe('a limit somebody set to the dose', () => {
  it('stands in the open at the exercise, where another weight could be taken', () => {
    const limit = { id: 'limit', text: asTyped('Mr Example: 4 kg at most.'), isLimit: true };
    const other = { id: 'breathe', text: asTyped('Keep breathing.') };
    const view = today({ exercises: [exercise('weight', weightDose, { cautions: [limit, other] })] });
    const page = sessionOf(view, 'item:0').replace(/<details.*?<\/details>/gs, '');
    expect(page).toContain('Mr Example: 4 kg at most.');
    expect(page).not.toContain('Keep breathing.');
  });
});
