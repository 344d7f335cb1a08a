/** The page of a set of holds says how many, how long, and asks for a count of holds. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { SetPage } from '#ui/patient/session/pages/set-page.tsx';
import '#ui/patient/words.ts';
import { begin } from '../session-play.ts';
import { chairDose, exercise, today } from '../views.ts';

afterEach(() => setLanguage());

const pageOf = (low: number, high: number): string => {
  const dose: Dose = {
    ...chairDose,
    method: 'variation',
    exerciseId: 'thumb-out-hold',
    side: 'left',
    repetitions: { low, high },
    reserve: 2,
    effectiveLoadKg: null,
    addedKg: 0,
    hold: { seconds: 5, mostSeconds: 10 },
  };
  const view = today({ exercises: [exercise('a', dose)] });
  const draft = begin(view);
  return renderToStaticMarkup(
    <SetPage
      draft={draft}
      clinic={view.clinic}
      hasCuff={false}
      asksPregnancy={false}
      joint={draft.joints[0]!}
      item={0}
      set={1}
      send={() => undefined}
      clock={() => 0}
    />,
  );
};

describe('a set of holds', () => {
  it('is told as holds of so many seconds', () => {
    expect(pageOf(5, 10)).toContain('5–10 holds of 5 seconds');
    expect(pageOf(1, 1)).toContain('One hold of 5 seconds');
  });

  it('is told in German', async () => {
    await speak('de');
    expect(pageOf(5, 10)).toContain('5- bis 10-mal 5 Sekunden halten');
  });
});
