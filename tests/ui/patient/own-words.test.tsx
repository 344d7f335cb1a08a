/** Texts that came with the day are shown in the language spoken, and told apart by id, never by their words. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import type { HistoryDay } from '#api/patient/history-view.ts';
import { type Text, textBy } from '#messages/text.ts';
import { setLanguage, spokenLanguage } from '#ui/language/words.ts';
import { ownCourse } from '#ui/patient/history/own-course.ts';
import type { ItemDraft, SessionDraft } from '#ui/patient/session/draft.ts';
import { ItemPage } from '#ui/patient/session/pages/item-page.tsx';
import { begin } from './session-play.ts';
import { exercise, today, weightDose } from './views.ts';

const text = (en: string, de: string): Text => textBy((tag) => (tag === 'de' ? de : en));

const spoken = today({
  exercises: [
    exercise('a', weightDose, {
      title: text('Straighten the knee', 'Knie strecken'),
      instructions: [text('Sit tall.', 'Sitzen Sie aufrecht.')],
      cautions: [{ id: 'breathe', text: text('Keep breathing.', 'Atmen Sie weiter.') }],
    }),
  ],
});

const page = (draft: SessionDraft): string =>
  renderToStaticMarkup(
    <ItemPage
      draft={draft}
      clinic={spoken.clinic}
      hasCuff={false}
      asksPregnancy={false}
      joint="right-knee"
      item={0}
      set={0}
      send={() => undefined}
      clock={() => 0}
    />,
  );

/** As an earlier release kept it on the phone. */
const ofEarlierRelease = (draft: SessionDraft): SessionDraft => ({
  ...draft,
  items: draft.items.map(
    (item): ItemDraft => ({
      ...item,
      title: 'Straighten the knee',
      instructions: ['Sit tall.'],
      cautions: ['Keep breathing.'],
    }),
  ),
});

afterEach(() => setLanguage());

describe('a session', () => {
  it('speaks of its exercise in the language chosen, changed in its middle too', () => {
    const draft = begin(spoken);
    expect(page(draft)).toMatch(/Straighten the knee.*Sit tall\..*Keep breathing\./s);
    setLanguage({ ...spokenLanguage(), tag: 'de' });
    expect(page(draft)).toMatch(/Knie strecken.*Sitzen Sie aufrecht\..*Atmen Sie weiter\./s);
  });

  it('begun in an earlier release goes on with the words it was begun with', () => {
    const draft = ofEarlierRelease(begin(spoken));
    setLanguage({ ...spokenLanguage(), tag: 'de' });
    expect(page(draft)).toMatch(/Straighten the knee.*Sit tall\..*Keep breathing\./s);
  });
});

const done = (day: string, exerciseId: string, loadKg: number): HistoryDay => ({
  day,
  sessions: [
    {
      kind: 'full',
      // The same name for two exercises: only the id tells them apart.
      exercises: [{ exerciseId, title: text('Curl', 'Beugen'), sets: [{ repetitions: 10, loadKg }] }],
      joints: [],
    },
  ],
  mornings: [],
  decisions: [],
});

describe('the picture of the last weeks', () => {
  it('shows one exercise by its id, not all that bear its name', () => {
    const days = [
      done('2026-03-09', 'curl-seated', 3),
      done('2026-03-07', 'curl-band', 9),
      done('2026-03-05', 'curl-seated', 2),
    ];
    expect(ownCourse({ today: '2026-03-09', days, earlierThan: null })?.work).toEqual({
      title: text('Curl', 'Beugen'),
      of: 'load',
      points: [
        { day: '2026-03-05', value: 2 },
        { day: '2026-03-09', value: 3 },
      ],
    });
  });
});
