/** The stored entry of a path, in the fields the engine reads, beside the running server. */
import { read } from '../phone-sequences/stored.ts';
import type { Path } from './paths.ts';

const ofPerson =
  'JOIN auth_user u ON u.patient_id = e.patient_id WHERE u.email = ? ORDER BY e.rowid DESC LIMIT 1';

interface Asked {
  readonly form: string;
}

interface Row {
  readonly id: string;
  readonly redFlags: string | null;
  readonly asked: string | null;
  readonly relief: number | null;
}

const listIn = (text: string | null): unknown => (text === null ? null : JSON.parse(text));
const formsIn = (text: string | null) => ((listIn(text) ?? []) as readonly Asked[]).map(({ form }) => form);

const morningFacts = (file: string, email: string) => {
  const [found] = read<Row & { via: string; otherJoint: string | null }>(
    file,
    `SELECT e.id AS id, e.red_flags AS redFlags, e.signs_asked AS asked, e.extra_pain_relief AS relief, e.via AS via,
            e.other_joint AS otherJoint
     FROM morning e ${ofPerson}`,
    email,
  );
  if (!found) return null;
  return {
    redFlags: listIn(found.redFlags),
    relief: found.relief,
    form: formsIn(found.asked)[0] ?? null,
    via: found.via,
    otherJoint: found.otherJoint,
    joints: read(
      file,
      `SELECT joint, pain_0_10 AS pain, stiffness_minutes AS stiffness, swelling, flare
       FROM morning_joint WHERE morning_id = ? ORDER BY joint`,
      found.id,
    ),
  };
};

interface SessionRow extends Row {
  readonly news: string | null;
  readonly otherJointWorse: number | null;
  readonly didExtra: number;
  readonly didExtraUnanswered: number;
  readonly limb: string | null;
}

interface Look {
  readonly colour: string | null;
  readonly feeling: string | null;
  readonly pulse: string | null;
}

const limbIn = (text: string | null): Look | null => {
  const [look] = (listIn(text) ?? []) as readonly Look[];
  return look ? { colour: look.colour, feeling: look.feeling, pulse: look.pulse } : null;
};

const sessionFacts = (file: string, email: string) => {
  const [found] = read<SessionRow>(
    file,
    `SELECT e.id AS id, e.red_flags AS redFlags, e.signs_asked AS asked, e.extra_pain_relief AS relief,
            e.news AS news, e.other_joint_worse AS otherJointWorse, e.did_extra AS didExtra,
            e.did_extra_unanswered AS didExtraUnanswered, e.limb_checks AS limb
     FROM training_session e ${ofPerson}`,
    email,
  );
  if (!found) return null;
  const { redFlags, asked, news, limb, id, ...rest } = found;
  return {
    ...rest,
    redFlags: listIn(redFlags),
    forms: formsIn(asked),
    news: listIn(news),
    limb: limbIn(limb),
    joints: read(
      file,
      `SELECT joint, pain_before_0_10 AS before, pain_during_0_10 AS during, pain_after_0_10 AS after,
              muscle_burn_0_10 AS burn, cuff_discomfort_0_10 AS cuff, gave_way AS gaveWay,
              gave_way_unanswered AS gaveWayUnanswered
       FROM session_joint WHERE session_id = ? ORDER BY joint`,
      id,
    ),
    // A weight that was planned and taken, a count, and where it is asked how many more would have gone.
    sets: read(
      file,
      `SELECT load_kg IS NOT NULL AS load, repetitions > 0 AS hasCount, reserve IS NOT NULL AS hasReserve
       FROM set_log WHERE session_id = ? ORDER BY item_id, set_number`,
      id,
    ),
  };
};

const sorted = (value: unknown): unknown =>
  Array.isArray(value)
    ? value.map(sorted)
    : typeof value === 'object' && value !== null
      ? Object.fromEntries(
          Object.entries(value)
            .sort(([a], [b]) => (a < b ? -1 : 1))
            .map(([name, one]) => [name, sorted(one)]),
        )
      : value;

/** What is stored and what should be, where they differ; null where each fact stands as it was pressed. */
export const factsThatDiffer = (file: string, { kind, who, stored }: Path): string | null => {
  const found = (kind === 'morning' ? morningFacts : sessionFacts)(file, `${who}@demo.invalid`);
  const [is, should] = [JSON.stringify(sorted(found)), JSON.stringify(sorted(stored))];
  return is === should ? null : `stored ${is}, pressed ${should}`;
};
