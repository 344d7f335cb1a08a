/** Every entry on a page can be marked as entered in error; what was marked stays, with who and why. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { type CorrectionSubject, correctionSubjects, isStruckOutOnly } from '#core/corrections/correction.ts';
import type { CareAnswer, Consents, Correction, EnteredRow, HomeEligibility } from '#ui/clinician/answers.ts';
import { CareScreen } from '#ui/clinician/care/care-screen.tsx';
import { CorrectForm } from '#ui/clinician/corrections/correct-form.tsx';
import { CorrectionsSection } from '#ui/clinician/corrections/corrections-section.tsx';
import { entryInWords } from '#ui/clinician/corrections/entry-words.ts';

// Forms ask the framework for its router, which is not there outside a request.
vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const day = '2026-03-02';
const entered: Readonly<Record<CorrectionSubject, Record<string, unknown>>> = {
  measurement: {
    kind: 'repetitions-to-failure',
    day,
    exerciseId: 'knee-extension-seated',
    side: 'right',
    loadKg: 250,
    repetitions: 8,
  },
  screening: {
    sheetVersion: '1',
    answers: [
      { item: 'past-clot', answer: 'yes' },
      { item: 'cancer', answer: 'no' },
    ],
  },
  event: { day, kind: 'fall', joint: null, remark: null },
  limit: {
    joint: 'right-knee',
    kind: 'load-limit',
    limitKg: 3,
    from: day,
    to: null,
    author: 'Dr Surgeon',
    remark: null,
  },
  goal: { goal: 'Climb stairs', state: 'open', byDay: null, note: null },
  baseline: { joint: 'right-knee', usualPain: null, acceptablePainLimit: 5, usualStiffnessMinutes: 10 },
  'effusion-test': { joint: 'right-knee', grade: '1+' },
  clearance: { method: 'occlusion', limb: null, side: null, findings: ['sickle-cell'], reason: 'Trait only' },
  'home-answers': { answers: [{ question: 'Could you sleep?', answer: null }] },
  'supervised-session': {
    limb: 'leg',
    side: 'right',
    day,
    supervisedThroughout: true,
    remoteReason: null,
    remark: null,
  },
  visit: { place: 'video', whereabouts: 'At home', callBackPhone: '910', present: [] },
  note: {
    day,
    contact: 'clinic',
    subjective: 'Stairs go better.',
    objective: null,
    assessment: null,
    plan: null,
    text: null,
  },
  contact: {
    signIds: ['s'],
    decisionIds: [],
    reached: 'patient',
    found: 'Calf soft.',
    advised: 'Ring again.',
    referredTo: null,
    againInHours: null,
  },
};
const row = (subject: CorrectionSubject, over: Partial<EnteredRow> = {}): EnteredRow => ({
  id: `row-${subject}`,
  recordedAt: 0,
  day,
  joint: null,
  entered: entered[subject],
  enteredInError: null,
  ...over,
});
const page = (
  subject: CorrectionSubject,
  rows: readonly EnteredRow[],
  corrections: readonly Correction[] = [],
) =>
  renderToStaticMarkup(
    <CorrectionsSection patientId="p" day={day} of={[{ subject, rows }]} corrections={corrections} />,
  );

describe('the corrections of a page', () => {
  it.each(correctionSubjects.filter((subject) => !isStruckOutOnly(subject)))(
    'offer for a %s to replace it and to strike it out, each with its reason',
    (subject) => {
      expect(page(subject, [row(subject)])).toContain('aria-label="Entered in error: 2 Mar');
      const form = (act: 'replace' | 'strike-out') =>
        renderToStaticMarkup(<CorrectForm patientId="p" subject={subject} row={row(subject)} act={act} />);
      expect(form('replace')).toMatch(/What was wrong.*Replace the entry/);
      expect(form('strike-out')).toMatch(/What was wrong.*Strike out the entry/);
    },
  );

  it('show what was marked with who and why, and offer nothing more for it', () => {
    const enteredInError = { reason: 'Typed 250 for 2.5', by: 'Ada', at: 1, replacedById: 'other' };
    const html = page('measurement', [row('measurement', { enteredInError })]);
    expect(html).toMatch(/Entered in error.*8 repetitions with 250 kg.*Replaced by Ada: Typed 250 for 2.5/);
    expect(html).not.toContain('aria-label="Entered in error');
  });

  it('open a note that was struck out whole, each part of it struck and marked', () => {
    const enteredInError = { reason: 'Another patient', by: 'Ada', at: 1, replacedById: null };
    const long = `${'Stairs go better. '.repeat(40)}The end.`;
    const said = { ...entered.note, subjective: long, plan: 'Ring on Friday.' };
    const html = page('note', [row('note', { entered: said, enteredInError })]);
    expect(html).toContain(`<s>${long}</s>`);
    expect(html).toContain('<s>Ring on Friday.</s>');
    expect(html.match(/Entered in error/g)).toHaveLength(2);
    expect(page('note', [row('note')])).not.toContain('Read it whole');
  });

  it('say which corrections wait, and that the stricter of both counts meanwhile', () => {
    const waiting = {
      id: 'c',
      subject: 'limit',
      correctedName: 'Ada',
      waitsToBeSeen: true,
      was: entered.limit,
      now: null,
    } as unknown as Correction;
    expect(page('limit', [], [waiting])).toMatch(
      /Load limit, 3 kg.*is struck out.*both count and the stricter one applies.*Show the new plan/,
    );
    expect(page('limit', [], [{ ...waiting, waitsToBeSeen: false }])).not.toContain('Show the new plan');
  });
});

it('an entry in words says what was not given as not given', () => {
  expect(entryInWords('baseline', entered.baseline)).toBe(
    'Right knee, usual pain not given, acceptable pain limit 5, stiffness 10 min',
  );
  expect(entryInWords('screening', entered.screening)).toBe('2 answers: 1 yes, 0 not known');
});

it('a limit in error that still binds says so in the list of limits', () => {
  const limit = {
    ...entered.limit,
    id: 'l',
    from: day,
    liftedOn: null,
    recordedAt: 0,
    correctedPending: true,
  };
  const html = renderToStaticMarkup(
    <CareScreen
      patientId="p"
      consents={{ kinds: [], rows: [], monitoringHours: null } as unknown as Consents}
      homeEligibility={{ limbs: [] } as unknown as HomeEligibility}
      care={{ limits: [limit], events: [], preApprovals: [] } as unknown as CareAnswer}
      clock={{ zone: 'UTC', now: 0 }}
      day={day}
    />,
  );
  expect(html).toMatch(/3 kg \(entered in error; counts until the new plan is seen\)/);
});
