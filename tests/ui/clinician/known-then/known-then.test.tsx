/** The page of a record as it was known then tells what the answer holds and nothing as seen from today. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type CareSetting, careSetting, limitOn } from '#tests/api/episode/setting.ts';
import { zone } from '#tests/support/clinic.ts';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { KnownThenScreen } from '#ui/clinician/review/known-then/known-then-screen.tsx';

let at: CareSetting;
beforeAll(async () => {
  at = await careSetting();
  const { patientId, item } = at;
  await sendSession(at.accessOn(0, '18:00'), patientId, item, 3);
  await at.clinician(1, '10:00').clinician.care.addLimit({ patientId, limit: limitOn({ limitKg: 2 }) });
  await sendMorning(at.accessOn(2, '08:00'), patientId, 9);
}, 60_000);
afterAll(() => at.store.close());

const pageAt = async (asked: string) => {
  const answer = await at.clinician(40).clinician.replay.knownThen({ patientId: at.patientId, at: asked });
  return renderToStaticMarkup(
    <KnownThenScreen patientId={at.patientId} answer={answer} refused={null} start="" zone={zone} />,
  );
};

it('tells phone, worklist and clinician of the instant, and that what came later is not in it', async () => {
  const page = await pageAt('2026-03-03T09:00');
  expect(page).toContain('had on 3 Mar 2026 at 09:00. What was recorded, sent, amended or corrected later');
  expect(page).toContain('2 Mar, 18:00');
  expect(page).toMatch(
    /Decision in force<\/h3>[\s\S]*?Hold[\s\S]*?right knee: [^<]*<span class="soft">By the rules\./,
  );
  expect(page).toMatch(/Limits<\/h3><p class="soft">/);
  // The cautions of the exercise, as the phone showed them with it.
  expect(page).toMatch(/On the phone<\/h3>[\s\S]*?<li>[\s\S]*?<ul class="small"><li>/);
  expect(page).toContain('No morning check had arrived.');
  expect(page).not.toMatch(/no more than 2|days ago/);
  expect(page).toContain('value="2026-03-03T09:00"');
});

it('tells a limit and a painful morning once they had come', async () => {
  const page = await pageAt('2026-03-04T08:00');
  expect(page).toContain('no more than 2');
  expect(page).toMatch(/Morning checks that had arrived[\s\S]*<td class="number">9<\/td>/);
});

it('says where nobody had a record, and asks again where nothing was asked', async () => {
  expect(await pageAt('2026-02-01')).toContain('had no record of this person then');
  const empty = (
    <KnownThenScreen
      patientId="p"
      answer={null}
      refused="Enter a day."
      start="2026-03-05T00:00"
      zone={zone}
    />
  );
  const page = renderToStaticMarkup(empty);
  expect(page).toContain('Enter a day.');
  expect(page).toContain('value="2026-03-05T00:00"');
  expect(page).not.toContain('On the phone');
});
