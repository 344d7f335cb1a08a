/** What a record says of the person: details with their history, and a second record of the same person. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import type { Patient, PatientBarAnswer, PatientDetails } from '#ui/clinician/answers.ts';
import { refusedAt, refusedBy } from '#ui/clinician/forms/submit-problems.ts';
import { MergeNotice } from '#ui/clinician/record/merge-notice.tsx';
import { PatientBar } from '#ui/clinician/record/patient-bar.tsx';
import { PatientDetailsSection } from '#ui/clinician/record/patient-details-section.tsx';
import { places, type RecordPath } from '#ui/clinician/record/places.ts';
import { StoppedNotice } from '#ui/clinician/record/stopped-notice.tsx';

vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => undefined }) }));

const merge = {
  patientId: 'other',
  intoId: 'shown',
  reason: 'Registered twice.',
  byName: 'Piotr',
  recordedAt: 0,
  keptId: null,
};
const patient: Patient = {
  id: 'shown',
  givenName: 'Maeve',
  familyName: 'Tarrow',
  birthDay: '1958-08-14',
  phone: null,
  patientNumber: null,
  profile: null,
  mergedInto: null,
  merges: [],
  isPlanOpen: false,
};
const bar: PatientBarAnswer = {
  state: { state: 'in-care' },
  screening: { on: '2026-02-02', until: '2026-07-31', isOver: false },
  consents: (['treatment', 'record-keeping', 'remote-monitoring'] as const).map((kind) => ({
    kind,
    act: 'given',
    at: Date.parse('2026-01-19T09:00:00Z'),
  })),
  items: [],
  next: null,
};
const head = (over: Partial<Patient>, said: Partial<PatientBarAnswer> = {}, section: RecordPath = '') =>
  renderToStaticMarkup(
    <PatientBar
      patient={{ ...patient, ...over }}
      bar={{ ...bar, ...said }}
      clock={{ zone: 'UTC', now: Date.parse('2026-03-02T09:00:00Z') }}
      day="2026-03-02"
      section={section}
    />,
  );

describe('the bar of a record', () => {
  it('shows birth, telephone as a link and patient number, and says where there is no telephone', () => {
    const html = head({ phone: '020 913 0100', patientNumber: 'LG-7' });
    expect(html).toContain('67, born 14 Aug 1958');
    expect(html).toMatch(/No\. LG-7.*<a href="tel:0209130100">020 913 0100<\/a>/);
    expect(head({})).toContain('No telephone number');
  });

  it('sets in ink a consent that was not given and a screening that ran out, and only those', () => {
    expect(head({})).not.toContain('<strong>');
    const consents = bar.consents.map((one, place) =>
      place === 0 ? { ...one, act: 'not-asked' as const, at: null } : one,
    );
    const open = head({}, { consents, screening: { on: '2025-02-02', until: '2025-08-01', isOver: true } });
    expect(open).toContain('<strong>not asked: treatment</strong>');
    expect(open).toContain('<strong>Screening ran out on 1 Aug 2025</strong>');
    expect(open).toContain('Consents: record, monitoring, 19 Jan');
    expect(head({}, { screening: null })).toContain('<strong>Not screened</strong>');
    const none = bar.consents.map((one) => ({ ...one, act: 'not-asked' as const, at: null }));
    expect(head({}, { consents: none })).toContain(
      '<strong>Consents: not asked: treatment, record, monitoring</strong>',
    );
  });

  it('leads from a pause or a sign to where it ends, with the reason as written', () => {
    const since = Date.parse('2026-02-27T09:00:00Z');
    expect(head({}, { state: { state: 'warning-sign', since } })).toMatch(
      /href="\/patients\/shown\/warning-signs".*Warning sign since 27 Feb; no contact yet/,
    );
    const why = { cause: 'operation', reason: 'Cataract', until: '2026-03-20', since } as const;
    expect(head({}, { state: { state: 'joint-paused', joint: 'left-knee', ...why } })).toContain(
      'Left knee paused since 27 Feb: Cataract, until 20 Mar',
    );
    expect(head({}, { state: { state: 'paused', ...why, cause: 'warning-sign', until: null } })).toContain(
      'Paused since 27 Feb: after a warning sign',
    );
  });

  it('says over the doses of plan and summary what stands above them, and nothing where nothing does', () => {
    const since = 0;
    const why = { cause: 'other', reason: 'Travelling', until: null, since } as const;
    const notice = (state: PatientBarAnswer['state']) =>
      renderToStaticMarkup(<StoppedNotice state={state} />);
    expect(notice({ state: 'warning-sign', since })).toContain('A warning sign is open.');
    expect(notice({ state: 'paused', ...why })).toContain('Everything is paused.');
    expect(notice({ state: 'joint-paused', joint: 'left-knee', ...why })).toContain(
      'The left knee is paused.',
    );
    expect(notice({ state: 'on-break', on: '2026-02-20', expectedBack: null })).toContain('On a break.');
    expect(notice({ state: 'closed', on: '2026-02-20', to: 'discharged' })).toContain('Care has ended.');
    expect(notice({ state: 'in-care' })).toBe('');
    expect(notice({ state: 'not-recorded' })).toBe('');
  });

  it('says of a break when it began and when the person is expected back, or that no day is named', () => {
    const on = (expectedBack: string | null) =>
      head({}, { state: { state: 'on-break', on: '2026-02-20', expectedBack } });
    expect(on('2026-03-20')).toContain('On a break since 20 Feb, expected back 20 Mar');
    expect(on(null)).toContain('On a break since 20 Feb, no day of return named');
  });

  it('names the end of care by what ended it', () => {
    const at = { state: 'closed', on: '2026-02-20' } as const;
    expect(head({}, { state: { ...at, to: 'discharged' } })).toContain('Discharged 20 Feb');
    expect(head({}, { state: { ...at, to: 'died' } })).toContain('Died 20 Feb');
  });

  it('names the next thing with its page, and on that page says that it is here', () => {
    const next = { because: 'item', kind: 'awaiting-signature', joint: null, decisionId: null } as const;
    expect(head({}, { next })).toContain(
      '<a href="/patients/shown/prescriptions#unsigned">Sign the waiting dose</a>',
    );
    expect(head({}, { next }, '/prescriptions')).toMatch(
      /<strong>Sign the waiting dose<\/strong>.*on this page/,
    );
    expect(head({})).toContain('Nothing on the worklist');
  });

  it('leads from a re-test that is due to the form of that measure', () => {
    const due = { because: 'item', kind: 'retest-due', joint: null, decisionId: null } as const;
    expect(head({}, { next: { ...due, measure: 'grip' } })).toContain(
      '<a href="/patients/shown/measurements?kind=grip">',
    );
    expect(head({}, { next: due })).toContain('<a href="/patients/shown/measurements">');
  });

  it('marks the place one is in on each of its pages', () => {
    for (const { name, pages } of places)
      for (const { path } of pages)
        expect([path, head({}, {}, path)]).toEqual([
          path,
          expect.stringMatching(new RegExp(`aria-current="page">${name}<`)),
        ]);
  });
});

describe('a record merged with another', () => {
  const notice = (over: Partial<Patient>) =>
    renderToStaticMarkup(<MergeNotice patient={{ ...patient, ...over }} />);

  it('shown: says by whom and why, links the other for reading, and that nothing new can be signed', () => {
    const html = notice({ merges: [merge], isPlanOpen: true });
    expect(html).toMatch(
      /by Piotr: Registered twice\..*\/patients\/other\?read=1.*Nothing new can be signed/,
    );
  });

  it('with a plan chosen, no longer says that nothing can be signed', () => {
    expect(notice({ merges: [{ ...merge, keptId: 'shown' }] })).not.toContain('Nothing new can be signed');
  });

  it('merged: leads to the one shown and says that it can only be read', () => {
    const html = notice({ id: 'other', mergedInto: merge, merges: [merge], isPlanOpen: true });
    expect(html).toMatch(/can only be read.*href="\/patients\/shown"/);
  });

  it('says nothing on a record that stands by itself', () => {
    expect(notice({})).toBe('');
  });
});

describe('personal details', () => {
  it('show what is in force, what stood there before and why, and say what is not recorded', () => {
    const version = { recordedAt: 0, byName: 'Nuala', detail: 'phone' as const };
    const details: PatientDetails = [
      {
        detail: 'phone',
        value: '020 913 0101',
        seen: 2,
        versions: [
          { ...version, version: 1, value: '020 913 0100', because: 'first', reason: null, strikes: null },
          {
            ...version,
            version: 2,
            value: '020 913 0101',
            because: 'entered-in-error',
            reason: 'A digit was wrong',
            strikes: 1,
          },
        ],
      },
      { detail: 'email', value: null, seen: 0, versions: [] },
    ];
    const html = renderToStaticMarkup(
      <PatientDetailsSection patientId="shown" details={details} clock={{ zone: 'UTC', now: 0 }} />,
    );
    expect(html).toMatch(/Telephone<\/dt><dd>020 913 0101/);
    expect(html).toMatch(/Email<\/dt><dd>Not recorded/);
    expect(html).toMatch(
      /the entry before was an error, Nuala.*A digit was wrong.*020 913 0100 · first recorded/,
    );
  });

  it('refused by the server, stand beside the one field of the form', () => {
    const data = { refusals: [{ field: 'input.phone', reason: 'Enter a telephone number.' }] };
    expect(refusedBy(refusedAt({ data, message: 'no' }, 'value'), 'detail-', 'x').problems).toEqual([
      { field: 'detail-value', text: 'Enter a telephone number.' },
    ]);
  });
});
