/** The three methods with what screening leaves of each, and what holds them back now; a closed one says why. */
import { type Eligibility, type Method, methods } from '#core/prescribing/methods.ts';
import { listed } from '#core/review/plain-words.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { say as sayHere } from '#messages/en/staff/prescribing/workbench.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { type GroupedReason, groupedReasons } from '../screening/outcome-table.tsx';
import { eligibilityStatus, methodInWords } from '../words.ts';
import { addressOf, type ChoiceAddress, searchOf } from './choose/choice-address.ts';
import { type Held, heldInWords } from './held.ts';

const isOpen = (row: MethodOutcome): boolean => row.eligibility.startsWith('open');

/** The least that is said of the limbs it is open on: precautions on one are not left out. */
export const eligibilityOf = (outcomes: readonly MethodOutcome[]): Eligibility => {
  const open = outcomes.filter(isOpen);
  if (open.length === 0)
    return outcomes.some((row) => row.eligibility === 'closed-until-cleared')
      ? 'closed-until-cleared'
      : 'closed';
  return open.every((row) => row.eligibility === 'open') ? 'open' : 'open-with-precautions';
};

export const eligibilityInWords = (word: string, outcomes: readonly MethodOutcome[]): string => {
  const open = outcomes.filter(isOpen).map((row) => `${row.side} ${row.limb}`);
  if (open.length === 0) return word;
  return open.length === 4
    ? say('open-everywhere', { eligibility: word })
    : say('open-on', { eligibility: word, limbs: listed(open) });
};

interface MethodLineProps {
  readonly method: Method;
  readonly outcomes: readonly MethodOutcome[];
  readonly held: string | null;
  readonly href: string;
  readonly isChosen: boolean;
}

/** "Eligible" would read as if it could be done today. */
const openByScreening = (word: string): string =>
  word === eligibilityStatus('open', []).word ? sayHere('method.open') : word;

const Reason = ({ reason }: { readonly reason: GroupedReason }) => (
  <>
    {reason.text}{' '}
    <span className="soft">
      ({reason.limbs.length === 4 ? say('closed-everywhere') : listed(reason.limbs)})
    </span>
  </>
);

/** The first stands; a method nobody means to use does not push the page down. */
const Reasons = ({ reasons }: { readonly reasons: readonly GroupedReason[] }) => {
  const [first, ...others] = reasons;
  return first ? (
    <div className="method-reasons">
      <p>
        <Reason reason={first} />
      </p>
      {others.length > 0 ? (
        <Disclosure summary={sayHere('method.more', { count: others.length })}>
          <ul>
            {others.map((reason) => (
              <li key={`${reason.code} ${reason.text}`}>
                <Reason reason={reason} />
              </li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </div>
  ) : null;
};

const MethodLine = ({ method, outcomes, held, href, isChosen }: MethodLineProps) => {
  const reasons = groupedReasons(outcomes);
  const contraindications = reasons.filter(({ eligibility }) => eligibility.startsWith('closed'));
  const precautions = reasons.filter(({ eligibility }) => eligibility === 'open-with-precautions');
  const { word, shape, tone } = eligibilityStatus(
    eligibilityOf(outcomes),
    outcomes.flatMap((row) => row.reasons),
  );
  const isHeld = held !== null && outcomes.some(isOpen);
  return (
    <li className="method stack-close">
      <p className="row">
        <a className="method-name" href={href} aria-current={isChosen ? 'true' : undefined}>
          {methodInWords[method]}
        </a>
        {isHeld ? (
          <StatusTag shape="stop" tone="danger">
            {sayHere('method.held', {
              by: held,
              screening: eligibilityInWords(openByScreening(word), outcomes),
            })}
          </StatusTag>
        ) : (
          <StatusTag shape={shape} tone={tone}>
            {eligibilityInWords(word, outcomes)}
          </StatusTag>
        )}
      </p>
      <Reasons reasons={[...contraindications, ...precautions]} />
    </li>
  );
};

export const MethodChoice = (props: {
  readonly patientId: string;
  readonly outcomes: readonly MethodOutcome[];
  readonly held: readonly Held[];
  readonly at: ChoiceAddress;
}) => (
  <ul className="methods">
    {methods.map((method) => (
      <MethodLine
        key={method}
        method={method}
        outcomes={props.outcomes.filter((row) => row.method === method)}
        held={heldInWords(props.held)}
        href={addressOf(props.patientId, { ...searchOf(props.at), method })}
        isChosen={props.at.method === method}
      />
    ))}
  </ul>
);
