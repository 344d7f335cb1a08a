/** What the steps of a first visit say beside what is asked: where it stands, what is closed, and what to do next. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import { limbs, sides } from '#core/exercises/joints.ts';
import { type Eligibility, methods } from '#core/prescribing/methods.ts';
import type { MethodReason } from '#core/screening/screening.ts';
import type { FirstVisitPage } from '#ui/clinician/episode/answers.ts';
import { Means, meansInOneSentence } from '#ui/clinician/first-visit/means.tsx';
import { NothingPossible } from '#ui/clinician/first-visit/nothing-possible.tsx';
import { StepList } from '#ui/clinician/first-visit/step-list.tsx';

vi.mock('next/navigation', () => ({ useRouter: () => ({}) }));

const reason = (code: string, over: Partial<MethodReason> = {}): MethodReason => ({
  code,
  from: 'screening',
  eligibility: 'closed-until-cleared',
  text: `${code}.`,
  clearedBy: null,
  support: 'clinic',
  ...over,
});
const everywhere = (eligibility: Eligibility, ...reasons: readonly MethodReason[]) =>
  methods.flatMap((method) =>
    limbs.flatMap((limb) => sides.map((side) => ({ method, limb, side, eligibility, reasons }))),
  );

describe('what answers mean so far', () => {
  it('tells what is still possible from what waits to be measured and from what is closed', () => {
    const missing = reason('blood-pressure-not-measured');
    expect(meansInOneSentence(everywhere('open'))).toMatch(/^Still possible: variation, low load and/);
    expect(meansInOneSentence(everywhere('closed', missing))).toMatch(/possible once all is asked/);
    expect(meansInOneSentence(everywhere('closed', missing, reason('past-clot')))).toBe(
      'No method is possible now.',
    );
  });

  it('names every finding with who may clear it, once for methods that stand the same', () => {
    const clearable = reason('past-clot', { clearedBy: 'physician' });
    const html = renderToStaticMarkup(<Means outcomes={everywhere('closed-until-cleared', clearable)} />);
    expect(html.match(/past-clot\./g)).toHaveLength(1);
    expect(html).toContain('Only with a physician’s clearance.');
  });
});

describe('where nothing can be prescribed yet', () => {
  const htmlOf = (...reasons: readonly MethodReason[]) =>
    renderToStaticMarkup(<NothingPossible patientId="p" outcomes={everywhere('closed', ...reasons)} />);

  it.each([
    ['a question not asked', reason('not-asked-past-clot'), 'step=screening'],
    ['a pressure', reason('blood-pressure-not-measured', { from: 'blood-pressure' }), 'step=measurements'],
    ['a consent', reason('no-consent-treatment', { from: 'consent' }), 'step=consents'],
    ['a finding a clinician may clear', reason('a', { clearedBy: 'clinician' }), 'Clear the finding'],
    ['a finding for a physician', reason('b', { clearedBy: 'physician' }), 'Write to the physician'],
    ['a finding nobody may clear', reason('c'), 'Book the next appointment'],
  ])('says why and leads on from %s', (_what, because, leads) => {
    const html = htmlOf(because);
    expect(html).toContain('Nothing can be prescribed yet, because:');
    expect(html).toContain(because.text);
    expect(html).toContain(leads);
  });
});

describe('the list of steps', () => {
  const page = {
    profile: { diagnosis: 'Knee osteoarthritis', followedJoints: ['right-knee'], ownedLoadsKg: [] },
    consents: [{ kind: 'treatment', title: 'Assessment and treatment', state: 'refused' }],
    baselines: [],
    items: [{ id: 'a' }, { id: 'b' }],
    screening: { answers: [{ item: 'a', answer: 'no' }] },
    states: [
      { step: 'consents', state: 'done', because: [] },
      { step: 'reason', state: 'open', because: [] },
      { step: 'screening', state: 'open', because: [] },
      { step: 'exercise', state: 'refused', because: ['Consent was refused.', 'More.'] },
    ],
  } as unknown as FirstVisitPage;
  const html = renderToStaticMarkup(<StepList patientId="p" page={page} at="reason" />);

  it('says of each whether it is done, open or not possible yet and why, with what stands on record', () => {
    expect(html).toContain('Done</span>: “Assessment and treatment” refused');
    expect(html).toContain('Open</span>: Knee osteoarthritis; right knee without usual values');
    expect(html).toContain('Open</span>: 1 of 2 answered');
    expect(html).toContain('Not possible yet</span>: Consent was refused. (1 more)');
  });

  it('leads to each step and marks the one that is open', () => {
    expect(html.match(/href="\/patients\/p\/care\/first-visit\?step=/g)).toHaveLength(4);
    expect(html.match(/aria-current="step"/g)).toHaveLength(1);
  });
});
