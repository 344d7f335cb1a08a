/** A template on the page: every dose whole with its cautions before anything is added, and what is left out named. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it, vi } from 'vitest';
import { askedTwice, sideOn, templateDoseOf } from '#core/prescribing/clinic-template.ts';
import { kneeDose } from '#tests/core/decision/small-record.ts';
import type { ClinicTemplate, ProposedTemplate } from '#ui/clinician/answers.ts';
import { TemplateUse } from '#ui/clinician/prescribing/templates/template-use.tsx';
import { TemplatesScreen } from '#ui/clinician/prescribing/templates/templates-screen.tsx';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const caution = {
  id: 'own',
  text: 'Bone is thin.',
  patient: { key: 'stop-signs' },
  from: 'answer',
  support: 'seen',
};
const request = { exerciseId: 'knee-extension-seated', side: 'left', method: 'low-load' };
const possible = {
  place: 0,
  title: 'Straighten the knee, sitting',
  method: 'low-load',
  request,
  isPossible: true,
  itemId: null,
  proposed: {
    dose: kneeDose,
    badDay: kneeDose,
    joints: ['left-knee'],
    cautions: [caution],
    notes: [],
    working: [],
  },
};
const left = (over: object) => ({
  ...possible,
  isPossible: false,
  place: 1,
  title: 'Clam',
  mayBeTyped: false,
  ...over,
});

const used = (doses: readonly object[]) =>
  renderToStaticMarkup(
    <TemplateUse
      patientId="one"
      at={{ words: '', isAtHome: true, isAll: false, template: 'template-1', on: 'left' }}
      template={{ name: 'First weeks', doses } as unknown as ProposedTemplate}
      inForce={[]}
      plannedDaysOfNew={0}
      heldBy={() => [{ by: 'the warning sign of 27 Nov', joint: null }]}
    />,
  );

it('shows what is this person’s own of each dose open, above the button that adds it', () => {
  const html = used([possible]);
  const [open, folded] = [html.indexOf('Bone is thin.'), html.indexOf('<details')];
  expect(open).toBeGreaterThan(0);
  expect(open).toBeLessThan(folded);
  expect(html).toContain('Held by the warning sign of 27 Nov');
  expect(html).toContain('the planned week has no day for it');
  expect(html.indexOf('Add 1 dose to sign together')).toBeGreaterThan(folded);
});

it('names what is left out with each reason, leads to the form only where a figure may be typed, and offers nothing to add where nothing is possible', () => {
  const closed = used([left({ reasons: ['Fracture not healed.', 'Not at home: mat.'] })]);
  for (const said of ['Clam', 'Fracture not healed.', 'Not at home: mat.', 'No dose of it is possible'])
    expect(closed).toContain(said);
  expect(closed).not.toContain('Open it in the form of a dose');
  expect(closed).not.toContain('to sign together');
  const missing = used([left({ reasons: ['Record body mass first.'], mayBeTyped: true })]);
  expect(missing).toContain('Open it in the form of a dose');
  expect(missing).toContain('place=1');
});

it('works one-sided doses on the side chosen, and asks for none of them twice', () => {
  const of = (side: 'left' | 'right' | 'both') =>
    templateDoseOf('low-load', { exerciseId: 'knee-extension-seated', side, loadKg: 4, sets: 3 });
  expect(of('left')).toEqual({
    method: 'low-load',
    exerciseId: 'knee-extension-seated',
    side: 'left',
    values: { sets: 3 },
  });
  expect([sideOn(of('left'), 'right'), sideOn(of('both'), 'right'), sideOn(of('left'), 'saved')]).toEqual([
    'right',
    'both',
    'left',
  ]);
  expect([...askedTwice([of('left'), of('right')], 'right')]).toEqual([1]);
  expect([...askedTwice([of('left'), of('right')], 'saved')]).toEqual([]);
});

it('says of a template that was withdrawn by whom and when, and offers it again', () => {
  const at = Date.parse('2026-03-02T09:00:00Z');
  const template = {
    id: 'one',
    name: 'First weeks',
    doses: [templateDoseOf('low-load', { exerciseId: 'knee-extension-seated', side: 'left', sets: 3 })],
    savedAt: at,
    savedBy: 'Clinician A',
    earlierNames: [{ name: 'Weeks', until: at, byName: 'Clinician B' }],
    withdrawn: { at, byName: 'Clinician C' },
  } as ClinicTemplate;
  const html = renderToStaticMarkup(
    <TemplatesScreen templates={[template]} clock={{ zone: 'Europe/Lisbon', now: at }} />,
  );
  expect(html).toContain('Withdrawn by Clinician C on ');
  expect(html).toContain('Named “Weeks” until');
  expect(html).toContain('Offer it again');
  expect(html).toContain('No template is offered now');
});
