/** The page of incidents: what counts first, what it stands in the place of behind it, and nobody named who must not be. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { withRouter } from '#tests/support/with-router.tsx';
import { AccountFrame } from '#ui/account/account-frame.tsx';
import type { IncidentAnswer } from '#ui/clinician/answers.ts';
import { CorrectScreen } from '#ui/clinician/incidents/correct-screen.tsx';
import { IncidentsScreen } from '#ui/clinician/incidents/incidents-screen.tsx';

const clock = { zone: 'Europe/Lisbon', now: Date.parse('2026-03-02T09:00:00Z') };
const named = { is: 'named', patientId: 'p1', name: 'Odo Tessaly' } as const;

const entry = (over: Partial<IncidentAnswer['entry']> = {}): IncidentAnswer['entry'] => ({
  version: 1,
  when: '2026-03-01T07:45',
  kind: 'near-miss',
  happened: 'The cuff was laid out for the wrong arm.',
  doneAtOnce: null,
  wouldPrevent: 'Marks on the cuffs',
  told: null,
  about: { is: 'nobody' },
  writtenAt: clock.now,
  writtenBy: 'Ada Verrin',
  ...over,
});

const incident = (over: Partial<IncidentAnswer> = {}): IncidentAnswer => ({
  id: 'i1',
  entry: entry(),
  earlier: [],
  changes: [],
  isOpen: true,
  ...over,
});

const page = (props: Partial<Parameters<typeof IncidentsScreen>[0]>) =>
  renderToStaticMarkup(
    withRouter(<IncidentsScreen incidents={[]} patient={null} mayName clock={clock} {...props} />),
  );

const correction = (props: Partial<Parameters<typeof CorrectScreen>[0]>) =>
  renderToStaticMarkup(
    withRouter(<CorrectScreen incident={incident()} patient={undefined} clock={clock} {...props} />),
  );

describe('the page of incidents', () => {
  it('says that none is open and none closed, and offers no empty file', () => {
    const html = page({});
    expect(html).toContain('No incident is open.');
    expect(html).toContain('No incident is closed.');
    expect(html).not.toContain('/incidents/file');
  });

  it('shows kind, day and time, and says of what was left out that it was not written down', () => {
    const html = page({ incidents: [incident()] });
    expect(html).toMatch(/Near miss: Sunday,? 1 March 2026, 07:45/);
    expect(html).toContain('Marks on the cuffs');
    expect(html.match(/Not written down/g)).toHaveLength(2);
    expect(html).toContain('href="/incidents/file"');
    expect(page({ incidents: [incident({ entry: entry({ when: '2026-03-01' }) })] })).toContain(
      'time not known',
    );
  });

  it('names who may be named with a way to the record, and nobody else', () => {
    const about = (whom: IncidentAnswer['entry']['about']) =>
      page({ incidents: [incident({ entry: entry({ about: whom }) })] });
    expect(about(named)).toContain('<a href="/patients/p1">Odo Tessaly</a>');
    expect(about({ is: 'unnamed' })).toContain('A patient not named to you');
    expect(about({ is: 'nobody' })).toContain('No patient named');
  });

  it('keeps the entry that was corrected readable behind the one in its place', () => {
    const later = entry({ version: 2, happened: 'It was the wrong leg.', writtenBy: 'Bo Lind' });
    const html = page({ incidents: [incident({ entry: later, earlier: [entry()] })] });
    expect(html.indexOf('wrong leg')).toBeLessThan(html.indexOf('wrong arm'));
    expect(html).toContain('1 earlier entry it stands in the place of');
    expect(html).toMatch(/Corrected by Bo Lind/);
  });

  it('shows a closed one under its heading with the reason, and offers to open it again', () => {
    const changes = [
      { incidentId: 'i1', state: 'closed', reason: 'Cuffs are marked.', at: clock.now, by: 'Bo Lind' },
    ] as const;
    const html = page({ incidents: [incident({ isOpen: false, changes })] });
    expect(html).toContain('Closed, 1');
    expect(html).toMatch(/Closed by Bo Lind, [^<]*: Cuffs are marked\./);
    expect(html).toContain('/forms/incident-reopen');
    expect(html).not.toContain('/forms/incident-close"');
  });

  it('says before anything is typed whom it will be about, and how another is named by who may name one', () => {
    expect(page({ patient: { patientId: 'p1', name: 'Odo Tessaly' } })).toContain('About Odo Tessaly.');
    expect(page({})).toContain('from the patient’s record');
    expect(page({ mayName: false })).not.toContain('from the patient’s record');
  });
});

describe('the page of a correction', () => {
  it('begins with what was written, about whom it was', () => {
    const html = correction({ incident: incident({ entry: entry({ about: named }) }) });
    expect(html).toContain('wrong arm.</textarea>');
    expect(html).toContain('About Odo Tessaly.');
    expect(html).toMatch(/name="about\.patientId"[^>]*value="same"/);
    expect(correction({ incident: incident({ entry: entry({ about: { is: 'unnamed' } }) }) })).toContain(
      'It stays about the same patient.',
    );
  });

  it('is about nobody, or about the patient of the record it was opened from, where that was asked for', () => {
    expect(correction({ patient: null })).toMatch(/name="about\.patientId"[^>]*value="none"/);
    const other = correction({ patient: { patientId: 'p2', name: 'Mara Quill' } });
    expect(other).toContain('About Mara Quill.');
    expect(other).toMatch(/name="about\.patientId"[^>]*value="p2"/);
  });
});

describe('the way to the page', () => {
  it.each([
    ['clinician', false, true],
    ['administrator', true, true],
    ['reception', false, false],
  ] as const)('is listed for a %s who administers %s: %s', (role, administers, isListed) => {
    const frame = (
      <AccountFrame person={{ role, administers }} current="/account">
        …
      </AccountFrame>
    );
    expect(renderToStaticMarkup(withRouter(frame)).includes('href="/incidents"')).toBe(isListed);
  });
});
