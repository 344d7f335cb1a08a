/** What a first visit at the desk leaves in the file, and what of it is missing. */
import { minimumSet } from '#core/screening/pre-visit.ts';
import { read } from '../phone-sequences/stored.ts';
import { differsIn } from './desk-path.ts';

/** A question answered with yes, and what of it is asked further. */
export interface Finding {
  readonly item: string;
  readonly details?: readonly string[];
  readonly limbs?: readonly string[];
}

interface Answer {
  readonly item: string;
  readonly answer: string;
  readonly details?: readonly string[];
  readonly limbs?: readonly { readonly limb: string; readonly side: string }[];
}

export interface StoredVisit {
  /** Kinds of consent given. */
  readonly consents: readonly string[];
  readonly diagnosis: string | null;
  readonly followedJoints: readonly string[];
  readonly loadsKg: readonly number[];
  readonly things: readonly string[];
  readonly goals: readonly string[];
  readonly usualPain: number | null;
  readonly answers: readonly Answer[];
  readonly measured: readonly string[];
  readonly doses: readonly {
    readonly method: string;
    readonly loadKg: number;
    readonly signedName: string;
  }[];
  readonly days: readonly number[];
  readonly invitations: number;
}

const textsIn = (text: string | null | undefined): readonly string[] =>
  text ? (JSON.parse(text) as string[]) : [];

/** What stands in the file of one patient. */
export const storedVisit = (file: string, who: string): StoredVisit => {
  const one = <R extends object>(question: string): R | undefined => read<R>(file, question, who).at(-1);
  const profile = one<{ diagnosis: string; joints: string; loads: string; things: string }>(
    `SELECT diagnosis, followed_joints AS joints, owned_loads_kg AS loads, owned_equipment AS things
     FROM care_profile WHERE patient_id = ? ORDER BY version`,
  );
  const sheet = one<{ answers: string }>(
    'SELECT answers FROM screening WHERE patient_id = ? ORDER BY version',
  );
  const week = one<{ items: string }>('SELECT items FROM programme WHERE patient_id = ? ORDER BY version');
  const lines = JSON.parse(week?.items ?? '[]') as readonly { readonly weekdays: readonly number[] }[];
  return {
    consents: read<{ kind: string }>(
      file,
      "SELECT kind FROM consent WHERE patient_id = ? AND act = 'given' ORDER BY kind",
      who,
    ).map(({ kind }) => kind),
    diagnosis: profile?.diagnosis ?? null,
    followedJoints: textsIn(profile?.joints),
    loadsKg: JSON.parse(profile?.loads ?? '[]'),
    things: textsIn(profile?.things),
    goals: textsIn(one<{ goals: string }>('SELECT goals FROM episode WHERE patient_id = ?')?.goals),
    usualPain:
      one<{ pain: number }>('SELECT usual_pain AS pain FROM baseline WHERE patient_id = ?')?.pain ?? null,
    answers: JSON.parse(sheet?.answers ?? '[]'),
    measured: read<{ kind: string }>(
      file,
      'SELECT kind FROM measurement WHERE patient_id = ? ORDER BY kind',
      who,
    ).map(({ kind }) => kind),
    doses: read<{ method: string; loadKg: number; signedName: string }>(
      file,
      `SELECT p.method AS method, json_extract(p.dose, '$.loadKg') AS loadKg, s.signed_name AS signedName
       FROM prescription p JOIN signature s ON s.prescription_id = p.id WHERE p.patient_id = ?`,
      who,
    ),
    days: lines.flatMap(({ weekdays }) => weekdays),
    invitations: read(file, 'SELECT id FROM invitation WHERE patient_id = ?', who).length,
  };
};

/** Every fact of the visit; a question is stored by itself, with the answer that was pressed for it. */
export const visitDiffers = (stored: StoredVisit, found: readonly Finding[]): string | null => {
  const items = minimumSet('low-load', 64).map(({ id }) => id);
  const said = (item: string) => stored.answers.find((answer) => answer.item === item);
  const isYes = (item: string) => found.some((finding) => finding.item === item);
  const named = (item: string) => [
    ...(said(item)?.details ?? []),
    ...(said(item)?.limbs ?? []).map(({ limb, side }) => `${side} ${limb}`),
  ];
  const [dose, ...moreDoses] = stored.doses;
  return differsIn({
    'three consents': stored.consents.join() === 'record-keeping,remote-monitoring,treatment',
    'the diagnosis': stored.diagnosis === 'Knee osteoarthritis, right',
    'one joint': stored.followedJoints.join() === 'right-knee',
    'the goal': stored.goals.join() === 'Get up from the floor',
    'the usual pain': stored.usualPain === 3,
    'each question with its answer': items.every(
      (item) => said(item)?.answer === (isYes(item) ? 'yes' : 'no'),
    ),
    'what was named of each finding': found.every(
      ({ item, details = [], limbs = [] }) => named(item).join() === [...details, ...limbs].join(),
    ),
    'no question that was not asked': stored.answers.length === items.length,
    'blood pressure and test': stored.measured.join() === 'blood-pressure,repetitions-to-failure',
    'the loads': stored.loadsKg.join() === '1,2,3,4,5',
    'the things': stored.things.includes('ankle weight') && stored.things.includes('firm chair'),
    'one low-load dose signed by name':
      moreDoses.length === 0 && dose?.method === 'low-load' && dose.signedName === 'Nuala Derravane',
    'a load that is owned': stored.loadsKg.includes(dose?.loadKg ?? Number.NaN),
    'its days': stored.days.join() === '1,4',
    'one invitation': stored.invitations === 1,
  });
};
