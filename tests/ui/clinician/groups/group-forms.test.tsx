/** The forms of a group hour ask for no names of patients where words are typed that no erasing reaches. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { withRouter } from '#tests/support/with-router.tsx';
import { CorrectForm, PlanForm, StateForms } from '#ui/clinician/groups/group-forms.tsx';

const entry = {
  ...{ hourId: 'hour', version: 1, writtenAt: 0, writtenBy: 'Ada Verrin' },
  ...{ name: 'Knees on Monday', place: 'Large room', when: '2026-03-02T10:00', minutes: 60 },
  ...{ clinicianId: 'ada', clinicianName: 'Ada Verrin' },
};
const clinicians = [{ id: 'ada', name: 'Ada Verrin' }];
const hourThat = (ended: 'cancelled' | null) => ({ id: 'hour', entry, ended });

/** What is said to a field, by its id. */
const hintsIn = (page: Parameters<typeof withRouter>[0]): Record<string, string> => {
  const html = renderToStaticMarkup(withRouter(page));
  return Object.fromEntries(
    [...html.matchAll(/id="([^"]+)-hint"[^>]*>([^<]*)</g)].map(([, id, hint]) => [id, hint]),
  );
};

it.each([
  ['planning one', <PlanForm key="plan" {...{ clinicians }} />, ['group-name']],
  [
    'correcting one',
    <CorrectForm key="correct" hour={hourThat(null)} {...{ clinicians }} />,
    ['correct-name'],
  ],
  ['ending one', <StateForms key="end" hour={hourThat(null)} />, ['cancel-reason', 'error-reason']],
  ['planning it again', <StateForms key="again" hour={hourThat('cancelled')} />, ['again-reason']],
] as const)('%s', (_what, page, fields) => {
  const hints = hintsIn(page);
  for (const field of fields) expect([field, hints[field]]).toEqual([field, 'No names of patients.']);
});
