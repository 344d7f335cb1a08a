/** The page of a set of holds says how many, how long, and asks for a count of holds. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import type { Dose } from '#core/prescribing/dose.ts';
import { speak } from '#ui/language/speak.ts';
import { setLanguage } from '#ui/language/words.ts';
import { OtherCount } from '#ui/patient/session/other-count.tsx';
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
    secondsPerRepetition: 9,
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

  it('says how long to hold, how long to let go, and when to stop, in holds', () => {
    const page = pageOf(5, 10);
    expect(page).toContain('Hold each one 5 seconds, then let go for 4 seconds.');
    expect(page).toContain('Stop when you could still do 2 more holds well.');
  });

  it('is told in German', async () => {
    await speak('de');
    const page = pageOf(5, 10);
    expect(page).toContain('5- bis 10-mal 5 Sekunden halten');
    expect(page).toContain('dann lassen Sie 4\u00a0Sekunden locker.');
    expect(page).toContain('Hören Sie auf, wenn Sie noch 2-mal gut halten könnten.');
  });
});

describe('another number than planned', () => {
  const counts = (over: Partial<Parameters<typeof OtherCount>[0]>): string =>
    renderToStaticMarkup(
      <OtherCount high={10} onCount={() => undefined} onLost={() => undefined} {...over} />,
    );

  it('of holds is asked for as those held to their end', () => {
    expect(counts({ isHeld: true })).toContain('How many holds did you do to their end?');
    expect(counts({})).toContain('How many did you do?');
  });

  it.each([
    [12, '>More<'],
    [13, '>Fewer or more<'],
  ])('under %d offers to type only what has no button', (high, offered) => {
    expect(counts({ high })).toContain(offered);
  });

  it('leads back to the number planned where it was opened by mistake', () => {
    expect(counts({ onBack: () => undefined })).toContain('>Back<');
    expect(counts({})).not.toContain('>Back<');
  });
});
