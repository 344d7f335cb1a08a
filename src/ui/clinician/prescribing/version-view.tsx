/** One version of one prescribed exercise, with its working and cautions. */
import type { ReactNode } from 'react';
import { jointInWords } from '#core/review/plain-words.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Version } from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { methodInWords } from '../words.ts';
import { CautionList } from './caution-list.tsx';

const originInWords: Readonly<Record<Version['origin'], string>> = {
  clinician: 'prescribed by a clinician',
  progress: 'an increase proposed after a decision',
  'ease-back': 'eased back after a decision',
  return: 'a return step after easing back',
};

export const stateInWords = (version: Version, clock: ClinicClock): string => {
  // A dose that was taken back acts by itself, inside what was signed before: nobody signed it anew.
  const verb = version.origin === 'ease-back' ? 'within the limits signed by' : 'signed by';
  const signed =
    version.signedAt === null
      ? 'not signed'
      : `${verb} ${version.signedName}, ${momentInWords(version.signedAt, clock)}`;
  const ended =
    version.endedAt === null ? '' : `; ended ${momentInWords(version.endedAt, clock)}: ${version.endReason}`;
  return `Version ${version.version}, ${originInWords[version.origin]}, ${signed}${ended}`;
};

export const VersionView = (props: {
  readonly version: Version;
  readonly clock: ClinicClock;
  readonly children?: ReactNode;
}) => {
  const { version, clock } = props;
  return (
    <article className="version stack-close keep-together">
      <h3>
        {doseTitle(version.dose)} <span className="soft">· {methodInWords[version.dose.method]}</span>
      </h3>
      <p className="prescribed-dose">{doseInWords(version.dose)}</p>
      <p>
        <strong>Easier session:</strong> {doseInWords(version.badDay)}
      </p>
      <p className="soft">
        {stateInWords(version, clock)}. Monitored joints: {version.joints.map(jointInWords).join(', ')}.
      </p>
      {version.correctedSince ? (
        <p>
          <strong>Worked out while a measurement stood that has been corrected since.</strong> Propose it anew
          to see the dose as it is now.
        </p>
      ) : null}
      {props.children}
      <Disclosure summary={`${version.cautions.length} cautions`}>
        <CautionList cautions={version.cautions} />
      </Disclosure>
      <Disclosure summary="How this dose was calculated">
        <ol>
          {version.working.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      </Disclosure>
    </article>
  );
};
