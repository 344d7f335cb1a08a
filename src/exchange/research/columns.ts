/** Each column of the files for research: what it says, and which columns of the record it is made from. */
import { classColumns, rowClassColumns } from './classes.ts';
import { type RowFile, rowFiles } from './facts.ts';
import { personColumns } from './people.ts';

interface ResearchColumn {
  readonly says: string;
  /** Columns of the record, as table.column. */
  readonly from: readonly string[];
}

const phase: ResearchColumn = {
  says: 'When in the course, counted from the person’s own first session',
  from: ['training_session.day', 'morning.day', 'decision.day', 'measurement.day'],
};

const ofClass: Readonly<Record<(typeof classColumns)[number], ResearchColumn>> = {
  sex: { says: 'Coefficient set of the formulas that ask for a sex', from: ['care_profile.formulaSex'] },
  ageBand: { says: 'Age in years at the first session', from: ['patient_identity.birthDay'] },
  joint: {
    says: 'The joint followed first, without its side; or arm, leg, neck or back',
    from: ['care_profile.followedJoints'],
  },
  diagnosis: {
    says: 'What was coded: inflammatory arthritis, or the group whose error of measuring holds; never the words',
    from: ['care_profile.inflammatoryArthritis', 'care_profile.errorGroup'],
  },
};

const ofPerson: Readonly<Record<(typeof personColumns)[number], ResearchColumn>> = {
  person: { says: 'An id made for this export, in no other file', from: [] },
  firstWeek: {
    says: 'Monday of the week of the first session, moved by whole weeks drawn for each person; not when it was',
    from: ['training_session.day'],
  },
  painChange: {
    says: 'Mean pain of the last five answered mornings against that of the first five, 0 to 10',
    from: ['morning_joint.pain', 'morning.day'],
  },
  weeksFollowed: { says: 'Weeks from the first session to the last', from: ['training_session.day'] },
  sessionsSent: { says: 'Number of sessions', from: ['training_session.day'] },
};

const ofRows: {
  readonly [F in RowFile]: Readonly<Record<(typeof rowFiles)[F][number], ResearchColumn>>;
} = {
  sessions: {
    method: { says: 'Way of dosing', from: ['prescription.method'] },
    kind: { says: 'As planned, the easier session, or a test', from: ['training_session.kind'] },
    painDuring: { says: 'Pain during the session, 0 to 10', from: ['session_joint.painDuring'] },
    painBefore: { says: 'Pain before it, 0 to 10', from: ['session_joint.painBefore'] },
    painAfter: { says: 'Pain after it, 0 to 10', from: ['session_joint.painAfter'] },
    load: { says: 'Mean load against the first of each exercise', from: ['set_log.loadKg'] },
    phase,
  },
  mornings: {
    pain: { says: 'Pain in the morning, 0 to 10', from: ['morning_joint.pain'] },
    stiffness: { says: 'Morning stiffness', from: ['morning_joint.stiffnessMinutes'] },
    flare: { says: 'Called a flare by the patient', from: ['morning_joint.flare'] },
    phase,
  },
  decisions: {
    decision: { says: 'What the rules decided', from: ['decision.decision'] },
    cause: { says: 'The entry that made them look', from: ['decision.cause'] },
    phase,
  },
  measurements: {
    kind: { says: 'What was measured, after the first time', from: ['measurement.kind'] },
    against: { says: 'Its figure against the first of its kind', from: ['measurement.figure'] },
    phase,
  },
};

/** In the order in which they stand in the files. */
export const researchColumns: readonly (ResearchColumn & {
  readonly file: string;
  readonly column: string;
})[] = [
  ...personColumns.map((column) => ({ file: 'people', column, ...ofPerson[column] })),
  ...classColumns.map((column) => ({ file: 'people', column, ...ofClass[column] })),
  ...(Object.keys(rowFiles) as RowFile[]).flatMap((file) => [
    ...rowClassColumns.map((column) => ({ file, column, ...ofClass[column] })),
    ...Object.entries<ResearchColumn>(ofRows[file]).map(([column, about]) => ({ file, column, ...about })),
  ]),
];
