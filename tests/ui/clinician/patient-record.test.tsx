/** What a record says of the person: details with their history, and a second record of the same person. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it, vi } from 'vitest';
import type { Patient, PatientDetails } from '#ui/clinician/answers.ts';
import { refusedAt, refusedBy } from '#ui/clinician/forms/submit-problems.ts';
import { MergeNotice } from '#ui/clinician/record/merge-notice.tsx';
import { PatientDetailsSection } from '#ui/clinician/record/patient-details-section.tsx';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';

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
const head = (over: Partial<Patient>) =>
  renderToStaticMarkup(
    <RecordFrame patient={{ ...patient, ...over }} day="2026-03-02" section="">
      {null}
    </RecordFrame>,
  );

describe('the head of a record', () => {
  it('shows telephone and patient number, and says where there is no telephone', () => {
    expect(head({ phone: '020 913 0100', patientNumber: 'LG-7' })).toMatch(
      /Tel\. 020 913 0100 · Patient number LG-7/,
    );
    expect(head({})).toContain('No telephone number');
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
