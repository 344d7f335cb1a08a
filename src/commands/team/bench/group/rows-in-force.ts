/** What stands on file for a patient before any session: identity, profile, screening, exercises, usual values. */
import { householdEquipment } from '#core/exercises/equipment.ts';
import { cautionWording } from '#core/prescribing/cautions/wording.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import type { Seeded } from '#simulation/raises/seeded.ts';
import {
  clinicId,
  dayOf,
  daysAgo,
  firstSessionOf,
  type GroupPlan,
  intake,
  itemId,
  jointsOf,
  patientId,
  prescriptionId,
  sessionStart,
  setsOfItem,
  versionsOfItem,
} from './plan.ts';
import { type Client, type RawRows, rawRows } from './raw-rows.ts';

const clinician = 'bench-clinician';
const ownedLoadsKg = [1, 2, 3, 4, 5, 6, 8];
const loadOfVersion = [2, 3, 4, 5];

export const doseOf = (patient: number, item: number, version: number): Dose => ({
  method: 'low-load',
  exerciseId: item === 0 ? 'knee-extension-seated' : 'straight-leg-raise',
  side: patient % 5 === 0 ? 'both' : 'right',
  sets: setsOfItem[item]!,
  repetitions: { low: 15, high: 25 },
  reserve: 2,
  restSeconds: 90,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  loadKg: loadOfVersion[version - 1]!,
  oneRepMaxKg: 14,
});

const cautions = JSON.stringify([
  {
    id: 'near-failure',
    text: 'Sets end near failure; stop a set when form goes.',
    patient: { key: 'near-failure' },
    from: 'method',
    support: 'clinic',
  },
]);

const screeningAnswers = JSON.stringify(screeningItems.map((item) => ({ item: item.id, answer: 'no' })));

const owned = ['id', 'clinic_id', 'patient_id', 'recorded_at', 'recorded_by'];

const columns = {
  patient: ['patient', ['id', 'clinic_id', 'created_at']],
  identity: ['patient_identity', ['patient_id', 'clinic_id', 'given_name', 'family_name', 'birth_day']],
  profile: [
    'care_profile',
    [
      ...owned,
      'version',
      'diagnosis',
      'inflammatory_arthritis',
      'followed_joints',
      'owned_loads_kg',
      'owned_equipment',
      'formula_sex',
      'swelling_not_asked',
    ],
  ],
  screening: ['screening', [...owned, 'version', 'sheet_version', 'day', 'answers']],
  measurement: ['measurement', [...owned, 'day', 'kind', 'value', 'figure', 'confirmed']],
  programme: ['programme', [...owned, 'version', 'from_day', 'items']],
  baseline: [
    'baseline',
    [
      ...owned,
      'joint',
      'usual_pain',
      'usual_pain_top',
      'acceptable_pain_limit',
      'usual_stiffness_minutes',
      'usual_swelling',
      'usual_effusion',
      'usual_fatigue',
      'set_on',
      'due_for_review',
      'by_name',
      'reason',
    ],
  ],
  prescription: [
    'prescription',
    [
      ...owned,
      'item_id',
      'version',
      'method',
      'exercise_id',
      'dose',
      'bad_day',
      'joints',
      'cautions',
      'caution_wording',
      'working',
      'origin',
    ],
  ],
  signature: [
    'signature',
    ['prescription_id', 'clinic_id', 'patient_id', 'signed_at', 'signed_by', 'signed_name'],
  ],
} as const satisfies Readonly<Record<string, readonly [string, readonly string[]]>>;

type Tables = Readonly<Record<keyof typeof columns, RawRows>>;

const tablesOf = (client: Client): Tables =>
  Object.fromEntries(
    Object.entries(columns).map(([name, [table, names]]) => [name, rawRows(client, table, names)]),
  ) as unknown as Tables;

const writePrescriptions = (tables: Tables, plan: GroupPlan, patient: number): void => {
  const joints = JSON.stringify(jointsOf(patient));
  for (const item of setsOfItem.keys()) {
    for (let version = 1; version <= versionsOfItem; version++) {
      const id = prescriptionId(patient, item, version);
      const dose = doseOf(patient, item, version);
      const badDay = { ...dose, sets: 1 };
      const at = version === 1 ? intake(plan) : sessionStart(plan, firstSessionOf(plan, version)) - 3_600_000;
      const [doseText, badDayText] = [JSON.stringify(dose), JSON.stringify(badDay)];
      const head = [id, clinicId, patientId(patient), at, clinician];
      const body = [itemId(patient, item), version, dose.method, dose.exerciseId, doseText, badDayText];
      const origin = version === 1 ? 'clinician' : 'progress';
      tables.prescription.add([...head, ...body, joints, cautions, cautionWording, '[]', origin]);
      tables.signature.add([id, clinicId, patientId(patient), at, clinician, clinician]);
    }
  }
};

const writePerson = (tables: Tables, plan: GroupPlan, patient: number, random: Seeded): void => {
  const id = patientId(patient);
  const came = intake(plan);
  const headOf = (kind: string, at = came) => [`${id}-${kind}`, clinicId, id, at, clinician];
  const joints = jointsOf(patient);
  tables.patient.add([id, clinicId, came]);
  tables.identity.add([id, clinicId, `Given ${patient}`, `Family ${patient % 977}`, '1958-06-01']);
  const kit = [JSON.stringify(ownedLoadsKg), JSON.stringify(householdEquipment), 'female', '[]'];
  tables.profile.add([...headOf('profile'), 1, 'Knee osteoarthritis', 0, JSON.stringify(joints), ...kit]);
  const screened = daysAgo(1 + random.below(400));
  const answers = [dayOf(screened), screeningAnswers];
  tables.screening.add([...headOf('screening', screened), 1, screeningSheetVersion, ...answers]);
  const figures = [
    { kind: 'body-mass', massKg: 70, figure: 70 },
    { kind: 'stature', statureCm: 168, figure: 168 },
    { kind: 'blood-pressure', systolicMmhg: 128, diastolicMmhg: 78, position: 'seated', figure: 128 },
  ];
  for (const { figure, ...value } of figures) {
    const text = JSON.stringify({ ...value, day: dayOf(came) });
    tables.measurement.add([...headOf(value.kind), dayOf(came), value.kind, text, figure, 0]);
  }
  const weekdays = [1, 3, 5];
  const lines = [...setsOfItem.keys()].map((item) => ({
    itemId: itemId(patient, item),
    weekdays,
  }));
  tables.programme.add([...headOf('programme'), 1, dayOf(came), JSON.stringify(lines)]);
  for (const joint of joints) {
    const baselineValues = daysAgo(5 + random.below(55));
    const values = [2, 2, 5, 10, 'none', 'zero', null, dayOf(baselineValues), 0];
    tables.baseline.add([
      ...headOf(`baseline-${joint}`, baselineValues),
      joint,
      ...values,
      clinician,
      'Settled in.',
    ]);
  }
  writePrescriptions(tables, plan, patient);
};

export const writeRowsInForce = (client: Client, plan: GroupPlan, random: Seeded): void => {
  const tables = tablesOf(client);
  for (let patient = 0; patient < plan.patients; patient++) writePerson(tables, plan, patient, random);
  for (const table of Object.values(tables)) table.flush();
};
