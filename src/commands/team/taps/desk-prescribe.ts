/** A new low-load dose for a patient who is known: from the record to the signature, and what then stands in the file. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { read } from '../phone-sequences/stored.ts';
import { type DeskPath, differsIn } from './desk-path.ts';

const who = 'desk-known';
/** Half a kilogram over what is in force, and owned. */
const loadKg = 3.5;

interface Stored {
  readonly dose: string;
  readonly badDay: string;
  readonly method: string;
  readonly origin: string;
  readonly joints: number;
  readonly cautions: number;
  readonly working: number;
  readonly signedName: string | null;
}

/** Oldest first. */
const versionsIn = (file: string): readonly Stored[] =>
  read<Stored>(
    file,
    `SELECT p.dose AS dose, p.bad_day AS badDay, p.method AS method, p.origin AS origin,
            json_array_length(p.joints) AS joints, json_array_length(p.cautions) AS cautions,
            json_array_length(p.working) AS working, s.signed_name AS signedName
     FROM prescription p LEFT JOIN signature s ON s.prescription_id = p.id
     WHERE p.patient_id = ? ORDER BY p.version`,
    who,
  );

/** Everything a signed dose rests on; but for the load it is the dose that was in force. */
export const storedDoseDiffers = (versions: readonly Stored[]): string | null => {
  const [before, after] = versions;
  const doseOf = (version: Stored | undefined) => JSON.parse(version?.dose ?? 'null') as LowLoadDose | null;
  const [was, is] = [doseOf(before), doseOf(after)];
  return differsIn({
    'one new version beside the one before it': versions.length === 2,
    'a low-load dose written by a clinician': after?.method === 'low-load' && after.origin === 'clinician',
    'the load that was typed': is?.loadKg === loadKg,
    'every other figure as it was':
      JSON.stringify({ ...is, loadKg: 0 }) === JSON.stringify({ ...was, loadKg: 0 }),
    'an easier session that is no heavier': Number(JSON.parse(after?.badDay ?? '{}').loadKg) <= loadKg,
    'its joints': Number(after?.joints) > 0,
    'its cautions, none fewer': Number(after?.cautions) >= Number(before?.cautions ?? Number.NaN),
    'its working': Number(after?.working) > 0,
    'a signature by name': after?.signedName === 'Nuala Derravane',
  });
};

export const lowLoadKnownPatient: DeskPath = {
  path: 'low-load-known-patient',
  from: `/patients/${who}`,
  mostTaps: 6,
  mostPages: 3,
  walk: async (page, { press, fill }) => {
    await press(page.getByRole('link', { name: 'Plan', exact: true }).first());
    await page.waitForURL(/prescriptions/);
    await press(page.getByRole('link', { name: 'Write a new version' }));
    await page.waitForURL(/prescribe/);
    await fill(page.getByLabel(/^Load/), String(loadKg));
    await press(page.getByRole('button', { name: 'Propose a dose' }));
    const proposal = page.getByRole('region', { name: 'Proposed dose' });
    await proposal.getByText(`${loadKg} kg`, { exact: true }).waitFor();
    await press(proposal.getByRole('button', { name: /^Sign / }));
    await proposal.getByText('Signed by', { exact: false }).waitFor();
  },
  differs: (file) => storedDoseDiffers(versionsIn(file)),
};
