/** One version of one prescribed exercise, with its working and cautions. */

import type { ReactNode } from 'react';
import { jointsToTell } from '#core/exercises/catalogue.ts';
import { isWithinSigned } from '#core/prescribing/signed-within.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Version } from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { methodInWords } from '../words.ts';
import { CautionList } from './caution-list.tsx';

const originInWords: Readonly<Record<Version['origin'], string>> = {
  clinician: say('origin.clinician'),
  progress: say('origin.progress'),
  'ease-back': say('origin.ease-back'),
  return: say('origin.return'),
};

/**
 * A dose that was taken back, or that went up inside the signed band or what was approved ahead, acts by itself
 * in the moment it is made: nobody signed it anew.
 */
export const signedInWords = (version: Version, clock: ClinicClock): string => {
  const { signedAt, signedName } = version;
  if (signedAt === null || signedName === null) return say('not-signed');
  return isWithinSigned(version)
    ? say('signed-within', { name: signedName, time: momentInWords(signedAt, clock) })
    : say('signed-by', { name: signedName, time: momentInWords(signedAt, clock) });
};

export const stateInWords = (version: Version, clock: ClinicClock): string => {
  const origin = originInWords[version.origin];
  const signed = signedInWords(version, clock);
  return version.endedAt === null
    ? say('state', { version: version.version, origin, signed })
    : say('state-ended', {
        version: version.version,
        origin,
        signed,
        time: momentInWords(version.endedAt, clock),
        reason: version.endReason ?? '',
      });
};

export const VersionView = (props: {
  readonly version: Version;
  readonly clock: ClinicClock;
  /** What holds of it now, over its cautions. */
  readonly said?: ReactNode;
  /** What is done with it. */
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
        <strong>{say('easier')}</strong> {doseInWords(version.badDay)}
      </p>
      <p className="soft">
        {say('joints', {
          state: stateInWords(version, clock),
          joints: jointsToTell(version.dose.exerciseId, version.dose.side, version.joints)
            .map(jointInWords)
            .join(', '),
        })}
      </p>
      {version.correctedSince ? (
        <p>
          <strong>{say('corrected-since')}</strong> {say('corrected-propose')}
        </p>
      ) : null}
      <div className="version-parts">
        <div className="stack-close">
          {props.said}
          <Disclosure summary={say('cautions', { count: version.cautions.length })}>
            <CautionList cautions={version.cautions} />
          </Disclosure>
          <Disclosure summary={say('working')}>
            <ol>
              {version.working.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ol>
          </Disclosure>
        </div>
        <div className="stack-close">{props.children}</div>
      </div>
    </article>
  );
};
