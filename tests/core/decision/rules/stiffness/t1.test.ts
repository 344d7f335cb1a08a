import { describeRule } from '../thresholds.ts';

describeRule('T1', {
  'stiffness over 60 minutes, 45 over usual and twice usual eases back': {
    versions: [1, 2],
    cases: [
      [{ stiffnessMinutes: 59 }, false],
      [{ stiffnessMinutes: 60 }, false],
      [{ stiffnessMinutes: 65, usualStiffnessMinutes: 20 }, false],
      [{ stiffnessMinutes: 66, usualStiffnessMinutes: 20 }, true],
      [{ stiffnessMinutes: 120, usualStiffnessMinutes: 60 }, false],
      [{ stiffnessMinutes: 121, usualStiffnessMinutes: 60 }, true],
      [{ stiffnessMinutes: 61 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'routine'],
  },
});
