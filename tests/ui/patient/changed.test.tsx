/** "Something has changed" at any hour: the whole list of signs first, then where, since when, and own words. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import { joints } from '#core/exercises/joints.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { setLanguage } from '#ui/language/words.ts';
import {
  beganText,
  beginnings,
  bodyAreas,
  type ChangeDraft,
  isEmptyNote,
  isNothing,
  mostLetters,
  noteOf,
  nothingSaid,
  placeText,
  signEntry,
  slipNote,
} from '#ui/patient/changed/change-draft.ts';
import { WordsPage } from '#ui/patient/changed/change-pages.tsx';
import { ChangedScreen } from '#ui/patient/changed/changed-screen.tsx';
import { dayState } from '#ui/patient/day-state.ts';
import { emptyOutbox, outboxReducer, type Saved } from '#ui/patient/outbox/outbox.ts';
import { TodayPage } from '#ui/patient/today/today-page.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { today } from './views.ts';

const nothing = () => undefined;
afterEach(() => setLanguage());
const speakGerman = () => {
  const { de } = everyLanguage;
  setLanguage({ tag: 'de', locale: de.locale, forms: de.forms, words: de.pages });
};

const given = {
  ownerId: 'p',
  clinic: today().clinic,
  followedJoints: ['right-knee', 'left-hip'],
  hasCuff: false,
  step: '',
  clock: () => 0,
  arrivalOf: () => 'kept' as const,
  onStep: nothing,
  onSave: async () => true,
  onHome: nothing,
} as const;
const page = (step: string, hasCuff = false) =>
  renderToStaticMarkup(<ChangedScreen {...given} step={step} hasCuff={hasCuff} />);

describe('the way from today’s page', () => {
  const home = (onChanged?: () => void) => {
    const view = viewOnDay(today({ asksNothing: true, sessionSent: true, isStopped: true }), '2026-03-09');
    return renderToStaticMarkup(
      <TodayPage
        view={view}
        runningSince={null}
        state={dayState(view, [], 0)}
        isReady
        onStart={nothing}
        onResume={nothing}
        onMorning={nothing}
        onPain={nothing}
        onChangeMorning={nothing}
        onTwoHours={nothing}
        {...(onChanged ? { onChanged } : {})}
      />,
    );
  };

  it('is there at any hour and whatever stands, a button of its own, and not the main one', () => {
    expect(home(nothing)).toMatch(
      /<button[^>]*class="button button-plain button-wide"[^>]*>Something has changed<\/button><div class="lines">/,
    );
    expect(home()).not.toContain('Something has changed');
  });
});

describe('what is asked', () => {
  it.each([true, false])(
    'begins with every warning sign of the list; that of a cuff where one is used: %s',
    (hasCuff) => {
      const html = page('', hasCuff);
      for (const flag of redFlags.filter((one) => one !== 'persistent-limb-change-after-release'))
        expect(html).toContain(`value="${flag}"`);
      expect(html.includes('value="persistent-limb-change-after-release"')).toBe(hasCuff);
      expect(html).toContain('No, none of these');
    },
  );

  it('then where: the followed joints first, then the body, then no place of its own', () => {
    const html = page('place');
    const values = [...html.matchAll(/value="([^"]+)"/g)].map(([, value]) => value);
    expect(values).toEqual(['right-knee', 'left-hip', ...bodyAreas, 'nowhere', 'unknown']);
  });

  it('then since when', () => {
    const values = [...page('began').matchAll(/value="([^"]+)"/g)].map(([, value]) => value);
    expect(values).toEqual([...beginnings, 'unknown']);
  });

  it('confirms nothing that was not ticked', () => {
    expect(page('confirm')).toContain('No, none of these');
  });
});

describe('the note', () => {
  const said: ChangeDraft = { ticked: [], place: 'right-knee', began: 'today', text: ' It is warm. ' };

  it('says what was said, in the language of the patient, and nothing that was left out', () => {
    expect(noteOf(said)).toBe('Something has changed. Where: Right knee. Began: Earlier today. It is warm.');
    expect(noteOf({ ...said, place: null, began: null })).toBe('Something has changed. It is warm.');
    expect(noteOf({ ...said, place: 'unknown', text: '' })).toBe(
      'Something has changed. Where: I don’t know. Began: Earlier today.',
    );
    expect(noteOf({ ...said, place: 'nowhere', text: '' })).toBe(
      'Something has changed. Where: Nowhere in particular. Began: Earlier today.',
    );
    speakGerman();
    expect(noteOf({ ...said, place: 'nowhere', began: null })).toBe(
      'Etwas hat sich geändert. Wo: An keiner bestimmten Stelle. It is warm.',
    );
    expect(noteOf(said)).toBe(
      'Etwas hat sich geändert. Wo: Knie rechts. Angefangen: Heute, etwas früher. It is warm.',
    );
  });

  it.each([
    [{}, true],
    [{ place: 'unknown' }, true],
    [{ began: 'unknown' }, true],
    [{ place: 'unknown', began: 'unknown' }, true],
    [{ began: 'now' }, false],
    [{ place: 'unknown', began: 'days' }, false],
    [{ place: 'nowhere' }, false],
    [{ text: '  ' }, true],
    [{ place: 'chest' }, false],
    [{ text: 'x' }, false],
  ] as const)('with %j alone says too little: %s', (more, isEmpty) => {
    expect(isEmptyNote({ ...nothingSaid, ...more })).toBe(isEmpty);
  });

  it('fits a message whatever place and time stand around it', () => {
    for (const speak of [() => setLanguage(), speakGerman]) {
      speak();
      const longest = [...joints, ...bodyAreas, 'nowhere' as const]
        .map(placeText)
        .sort((a, b) => b.length - a.length)[0]!;
      const began = beginnings.map(beganText).sort((a, b) => b.length - a.length)[0]!;
      const around =
        noteOf({ ...nothingSaid, place: 'body', began: 'week' }).length + longest.length + began.length;
      expect(around + mostLetters).toBeLessThan(1000);
      expect(slipNote(['chest-pain']).length).toBeLessThan(1000);
    }
  });

  it('names a sign that was taken back, as taken back', () => {
    expect(slipNote(['fainting'])).toBe(
      'Ticked as a warning sign, and taken back when asked once more: You fainted, or almost did.',
    );
  });

  it('is no draft before something was said', () => {
    expect(isNothing(nothingSaid)).toBe(true);
    expect(isNothing({ ...nothingSaid, ticked: ['fainting'] })).toBe(false);
    expect(isNothing(said)).toBe(false);
  });

  it.each([
    [said, true],
    [{ ...said, place: 'unknown', began: 'unknown' } as const, false],
  ])('leaves the words to the patient only where the rest says enough: %#', (draft, isFree) => {
    const change = { draft, isReady: true, say: nothing, send: async () => undefined } as never;
    const html = renderToStaticMarkup(<WordsPage {...given} change={change} />);
    expect(html).toContain('In your own words');
    expect(html.includes('if you like')).toBe(isFree);
  });

  it('is sent by one main button', () => {
    const change = { draft: said, isReady: true, say: nothing, send: async () => undefined } as never;
    const html = renderToStaticMarkup(<WordsPage {...given} change={change} />);
    expect(html.match(/class="button(?: button-(?:wide|large))*"/g)).toHaveLength(1);
    expect(html).toContain(`maxLength="${mostLetters}"`);
  });
});

describe('a warning sign told so', () => {
  const entry = signEntry({ entryId: 's', day: '2026-03-09' }, ['fainting']);
  const saved = (more: Partial<Saved>): Saved =>
    ({
      entryId: entry.entryId,
      ownerId: 'p',
      kind: 'sign',
      day: entry.day,
      savedAt: 2,
      isUrgent: true,
      status: 'waiting',
      early: 0,
      ...more,
    }) as Saved;

  it('goes before everything that waits on the phone', () => {
    const waits = saved({ entryId: 'a', kind: 'session', isUrgent: false, savedAt: 1 });
    const { state } = outboxReducer(
      { ...emptyOutbox, isOnline: false },
      { type: 'saved', saved: waits, now: 1 },
    );
    const { state: both } = outboxReducer(state, { type: 'saved', saved: saved({}), now: 2 });
    expect(outboxReducer(both, { type: 'online', now: 3 }).state.sendingId).toBe('s');
  });

  it('stops the phone by itself until the clinic’s page speaks of it', () => {
    const view = viewOnDay(today(), '2026-03-09');
    expect(dayState(view, [saved({})], 3).hasReportedFlag).toBe(true);
    expect(dayState({ ...view, knownEntryIds: ['s'] }, [saved({})], 3).hasReportedFlag).toBe(false);
  });
});
