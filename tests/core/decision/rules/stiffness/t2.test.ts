import { describeRule } from '../thresholds.ts';

describeRule('T2', {
  'stiffness over 30 minutes, 20 over usual and half as much again holds': {
    versions: [1, 2],
    cases: [
      [{ stiffnessMinutes: 29 }, false],
      [{ stiffnessMinutes: 30 }, false],
      [{ stiffnessMinutes: 'not-applicable' }, false],
      [{ stiffnessMinutes: 30, usualStiffnessMinutes: 0 }, false],
      [{ stiffnessMinutes: 31, usualStiffnessMinutes: 0 }, true],
      [{ stiffnessMinutes: 40, usualStiffnessMinutes: 20 }, false],
      [{ stiffnessMinutes: 41, usualStiffnessMinutes: 20 }, true],
      [{ stiffnessMinutes: 90, usualStiffnessMinutes: 60 }, false],
      [{ stiffnessMinutes: 91, usualStiffnessMinutes: 60 }, true],
      [{ stiffnessMinutes: 31 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
