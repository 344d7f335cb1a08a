/** The pages of a look back: the warning stands with every figure, and what was typed stands in its field. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { movedFrom } from '#api/inputs/what-if.ts';
import { movedBy, typedIn, weeksBy } from '#ui/clinician/what-if/asked.ts';
import { TriedTable } from '#ui/clinician/what-if/on-invented-people.tsx';
import { PatientWhatIf, type PatientWhatIfProps } from '#ui/clinician/what-if/patient-what-if.tsx';
import { WhatIfView } from '#ui/design-system/what-if/what-if-view.tsx';

const found = {
  since: '2026-01-26',
  looked: 93,
  differing: 3,
  bolder: 1,
  moreCautious: 1,
  other: 1,
  bolderTo: { pause: 0, 'ease-back': 0, hold: 1, progress: 0 },
  moreCautiousTo: { pause: 1, 'ease-back': 0, hold: 0, progress: 0 },
  patients: 1,
  weeks: [{ from: '2026-01-26', bolder: 1, moreCautious: 1 }],
  lines: [
    {
      patientId: 'p',
      name: '',
      joint: 'right-knee' as const,
      day: '2026-01-27',
      before: 'ease-back' as const,
      after: 'hold' as const,
      rules: ['P2'],
      way: 'bolder' as const,
    },
  ],
};

const page = (over: Partial<PatientWhatIfProps> = {}) =>
  renderToStaticMarkup(
    <PatientWhatIf
      patientId="p"
      joints={['right-knee']}
      settings={[]}
      typed={{}}
      found={null}
      refused={null}
      {...over}
    />,
  );

describe('what if, of one person', () => {
  it('warns that the person would have answered differently, asked or not yet asked, once', () => {
    for (const html of [page(), page({ found })])
      expect(html.match(/would have answered differently to another dose/g)).toHaveLength(1);
  });

  it('shows bolder and more cautious apart, and each day with its rules', () => {
    const html = page({ found });
    expect(html).toContain(
      '3 days would have differed, of one patient: 1 more cautious, 1 bolder, 1 bolder in one answer and more cautious in another',
    );
    expect(html).toContain('Eased back');
    expect(html).toContain('P2');
  });

  it('says how many people it left out for their care teams, and nothing where there are none', () => {
    const shown = (closed: number) => renderToStaticMarkup(<WhatIfView found={{ ...found, closed }} />);
    expect(shown(1)).toContain('1 person with such days belongs to a care team you are not in');
    expect(shown(2)).toContain('2 people with such days belong to care teams you are not in');
    expect(shown(0)).not.toContain('care team');
  });

  it('keeps what was typed where it is refused', () => {
    const html = page({ typed: { limit: '9' }, refused: 'right-knee: at most 7.' });
    expect(html).toContain('value="9"');
    expect(html).toContain('right-knee: at most 7.');
  });
});

describe('a setting tried on invented people', () => {
  const row = { title: '', onFrontier: false, type: 'all', strengthPercent: 14.3, badDays: 8.9 };
  const now = { ...row, arm: 'version-2', loadCausedBadDays: 1, clinicianActions: 6.5, finalDose: 0.97 };
  const shown = (tried: typeof now) =>
    renderToStaticMarkup(<TriedTable found={{ people: 20, weeks: 12, now: [now], tried: [tried] }} />);

  it('stands beside the setting of the clinic, with how many people and that all are invented', () => {
    const html = shown({ ...now, badDays: 7.5 });
    for (const words of ['20 of each', '12 weeks', '8.9', '7.5', 'Every person here is invented'])
      expect(html).toContain(words);
    expect(html).not.toContain('changes nothing');
  });

  it('says so where no figure differs', () => {
    expect(shown(now)).toContain('on these people the setting changes nothing');
  });

  it('is offered where a setting of the clinic is looked back with, and not for one joint alone', () => {
    const offered = (typed: PatientWhatIfProps['typed']) =>
      page({ found, typed }).includes('Try the setting on invented people');
    expect(offered({ setting: 'severe-pain', value: '7' })).toBe(true);
    expect(offered({ joint: 'right-knee', limit: '6' })).toBe(false);
  });
});

describe('what is typed', () => {
  it('asks for what was typed and leaves out what was left empty', () => {
    const typed = typedIn({
      joint: 'right-knee',
      limit: '7',
      usual: '',
      setting: 'severe-pain',
      value: ['7', '8'],
    });
    expect(movedBy(typed)).toEqual({
      joints: { 'right-knee': { acceptablePainLimit: 7 } },
      'severe-pain': 7,
    });
    expect(movedBy(typedIn({ joint: 'right-knee', weeks: '4' }))).toBeNull();
    expect(movedBy({ joint: 'neck', limit: 'high' })).toEqual({
      joints: { neck: { acceptablePainLimit: 'high' } },
    });
  });

  it('values of no joint are asked as well, and refused with what they lack', () => {
    const moved = movedBy(typedIn({ limit: '6' }));
    expect(moved).toEqual({ joints: { '': { acceptablePainLimit: 6 } } });
    expect(movedFrom(moved)).toEqual({ refusals: ['Choose the joint that these values are of.'] });
  });

  it.each([
    ['0', 12],
    ['1', 1],
    ['52', 52],
    ['53', 12],
    ['two', 12],
    [undefined, 12],
  ])('weeks typed as %s are %i', (weeks, read) => {
    expect(weeksBy(weeks === undefined ? {} : { weeks })).toBe(read);
  });
});
