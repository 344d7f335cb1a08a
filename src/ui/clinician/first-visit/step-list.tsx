/** The steps in the order of the appointment: what is done, what is open, and why one is refused. */
import type { FirstVisitStep } from '#core/episode/first-visit/first-visit-steps.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { jointInWords, listed } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { Mark } from '#ui/design-system/mark.tsx';
import type { FirstVisitPage } from '../episode/answers.ts';
import { addressOfStep } from './step-address.ts';

type State = FirstVisitPage['states'][number];

/** A joint whose usual values nobody has entered is named with it. */
const jointsStanding = (followed: readonly Joint[], { baselines }: FirstVisitPage): string =>
  listed(
    followed.map((joint) =>
      baselines.some((row) => row.joint === joint)
        ? jointInWords(joint)
        : say('usual-missing', { 'joint-name': jointInWords(joint) }),
    ),
  );

/** What stands on record of a step, in a few words; "" where its state says all. */
const standing = (step: FirstVisitStep, page: FirstVisitPage): string => {
  const { profile, consents, items, screening } = page;
  switch (step) {
    case 'consents':
      return consents
        .filter(({ state }) => state === 'refused' || state === 'withdrawn')
        .map(({ title, state }) => say(`consent.${state as 'refused'}`, { title }))
        .join('; ');
    case 'reason':
      return profile ? `${profile.diagnosis}; ${jointsStanding(profile.followedJoints, page)}` : '';
    case 'screening': {
      const given = items.filter(({ id }) => screening?.answers.some(({ item }) => item === id)).length;
      return given > 0 ? say('answered-of', { answered: given, all: items.length }) : '';
    }
    case 'home':
      return profile?.ownedLoadsKg.length ? say('loads-kg', { loads: profile.ownedLoadsKg.join(', ') }) : '';
    default:
      return '';
  }
};

const shapeOf = { done: 'done', open: 'unknown', refused: 'waiting' } as const;

const Standing = ({ one, page }: { readonly one: State; readonly page: FirstVisitPage }) => {
  const [because, ...more] = one.because;
  const said = because ?? standing(one.step, page);
  return (
    <span className="visit-step-said">
      <span className="visit-step-state">{say(`state.${one.state}`)}</span>
      {said ? `: ${said}` : ''}
      {more.length > 0 ? ` ${say('more-reasons', { count: more.length })}` : ''}
    </span>
  );
};

export const StepList = (props: {
  readonly patientId: string;
  readonly page: FirstVisitPage;
  readonly at: FirstVisitStep;
}) => (
  <nav className="visit-steps screen-only" aria-label={say('steps')}>
    <ol>
      {props.page.states.map((one) => (
        <li key={one.step} data-state={one.state}>
          <a
            href={addressOfStep(props.patientId, one.step)}
            aria-current={one.step === props.at ? 'step' : undefined}
          >
            <span className="visit-step-name">
              {say(`step.${one.step}`)}
              <Mark shape={shapeOf[one.state]} />
            </span>
            <Standing one={one} page={props.page} />
          </a>
        </li>
      ))}
    </ol>
  </nav>
);
