/** Decisions of the last months, made by the engine from random quiet facts; the newest ones are made by the product itself. */
import { decide } from '#core/decision/decide.ts';
import { engineSettings, newestVersion } from '#core/decision/settings.ts';
import { defaultsOf } from '#core/sources/clinic-setting.ts';
import { inOrder, settingsIdOf } from '#data/decision/settings-stored.ts';
import { randomFacts } from '#simulation/raises/random-facts.ts';
import type { Seeded } from '#simulation/raises/seeded.ts';
import { morningId, sessionId } from './logged-rows.ts';
import { clinicId, dayOf, type GroupPlan, jointsOf, morningAfter, patientId } from './plan.ts';
import { type Client, numberedId, rawRows } from './raw-rows.ts';

/** Sessions back for which a decision is kept; the record itself goes back further. */
const sessionsDecided = 40;
const poolSize = 64;
/** One patient in so many is one whom decisions may have stopped: on a usual day few stand in danger, not everybody. */
const oneMayBeStoppedIn = 25;
const decision = 4;

const columns = [
  'id',
  'clinic_id',
  'patient_id',
  'joint',
  'session_id',
  'morning_id',
  'cause',
  'evaluated_at',
  'day',
  'facts',
  'settings_id',
  'engine_version',
  'decision',
  'largest_step',
  'today',
  'contact',
  'reasons',
];

const settings = defaultsOf(engineSettings);
const settingsId = settingsIdOf(clinicId, settings);

const poolOf = (random: Seeded, mayStop: boolean) => {
  const drawn = (): ReturnType<typeof randomFacts> => {
    const facts = randomFacts(random, 0.9);
    return mayStop || decide(facts).decision !== 'pause' ? facts : drawn();
  };
  return Array.from({ length: poolSize }, () => {
    const facts = drawn();
    const answers = decide(facts);
    const words = [answers.decision, answers.largestStep, answers.today, answers.contact];
    return [
      JSON.stringify(facts),
      settingsId,
      String(newestVersion),
      ...words,
      JSON.stringify(answers.reasons),
    ];
  });
};

export const writeDecisions = (client: Client, plan: GroupPlan, random: Seeded): void => {
  const [usual, stopped] = [poolOf(random, false), poolOf(random, true)];
  const used = rawRows(client, 'decision_settings', ['id', 'clinic_id', 'settings']);
  used.add([settingsId, clinicId, JSON.stringify(inOrder(settings))]);
  used.flush();
  const rows = rawRows(client, 'decision', columns);
  let number = 0;
  for (let place = Math.max(0, plan.sessionsEach - sessionsDecided); place < plan.sessionsEach - 1; place++) {
    const at = morningAfter(plan, place) + 1000;
    for (let patient = 0; patient < plan.patients; patient++) {
      for (const joint of jointsOf(patient)) {
        const about = [joint, sessionId(plan, patient, place), morningId(plan, patient, place), 'morning'];
        const head = [numberedId(decision, number++), clinicId, patientId(patient), ...about, at, dayOf(at)];
        rows.add([...head, ...random.pick(patient % oneMayBeStoppedIn === 0 ? stopped : usual)]);
      }
    }
  }
  rows.flush();
};
