/** What stands now of the exercise that is chosen, above the figures of its new dose. */
import type { ClinicMachine } from '#core/clinic/machine.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import type { EarlierDoses, Patient, Prescriptions, Version } from '../../answers.ts';
import { type ClinicClock, today } from '../../when.ts';
import type { ChoiceAddress } from '../choose/choice-address.ts';
import { goneInWords, loadsThereInWords } from '../place/machines.ts';
import { signedInWords } from '../version-view.tsx';
import { earlierInWords } from './earlier-doses.ts';

interface NowProps {
  readonly patient: Patient;
  readonly clock: ClinicClock;
  readonly prescriptions: Prescriptions;
  readonly machines: readonly ClinicMachine[];
  readonly at: ChoiceAddress;
  readonly earlier: EarlierDoses;
}

/** In force by the same method on the same side, though what is set here began as an exercise of its own. */
const sameInForce = ({ prescriptions, at }: NowProps, method: Method): Version | undefined =>
  prescriptions.inForce.find(
    ({ dose }) =>
      dose.method === method && dose.exerciseId === at.exerciseId && (!at.side || dose.side === at.side),
  );

const nowInWords = (props: NowProps, version: Version | null, method: Method): string => {
  const same = version ?? sameInForce(props, method);
  if (!same) return say(method === 'occlusion' ? 'now.all-asked' : 'now.none');
  const said = { version: same.version, signed: signedInWords(same, props.clock) };
  return say(version ? 'now.from' : 'now.same', said);
};

export const aboutNow = (props: NowProps, version: Version | null, method: Method): readonly string[] => {
  const { patient, clock, prescriptions, machines, at } = props;
  const loads = patient.profile?.ownedLoadsKg ?? [];
  const waiting = prescriptions.unsigned.filter(({ itemId }) => itemId === version?.itemId);
  return [
    ...waiting.map(({ dose }) => say('now.waits', { dose: doseInShort(dose) })),
    nowInWords(props, version, method),
    ...earlierInWords(props.earlier, today(clock)),
    ...(version ? goneInWords(machines, version.dose) : []),
    ...(method === 'occlusion' ? [] : loadsThereInWords(machines, at.exerciseId ?? '', loads)),
  ];
};
