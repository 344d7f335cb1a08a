'use client';
import type { LimbSign } from '#core/prescribing/occlusion/limb-check.ts';
/** Once the cuff is off: colour, feeling and, where it was shown, the pulse, each on a page of its own. */
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { telephone } from '#ui/language/ring-text.tsx';
import { clockText, timeText } from '#ui/language/text-of-time.ts';
import { useNow } from '#ui/patient/phone/use-now.ts';
import { AnswerPage } from '#ui/patient/questions/answer-page.tsx';
import { t } from '#ui/patient/words.ts';
import { limbQuestion } from '../check-rows.ts';
import type { ItemDraft, LimbAnswer } from '../draft.ts';
import { releasedAt } from '../restriction.ts';
import { signOf } from '../steps.ts';
import { ClockBand } from './clock-band.tsx';
import type { PageProps } from './page-props.ts';

/** Common practice: two minutes seated after release. */
const seatedSeconds = 120;

/** A change that is still there this long after release is a warning sign of the engine's table. */
const limbSettlesSeconds = 600;

const settlesAt = (item: ItemDraft, now: number): number =>
  (releasedAt(item) ?? now) + limbSettlesSeconds * 1000;

/** Of a pulse only "I was not shown how" is a way out, and only the first time. */
const apart = (isPulse: boolean, isLater: boolean) =>
  isPulse
    ? isLater
      ? []
      : [{ value: 'not-shown' as const, label: t('limb.not-shown'), isApart: true }]
    : [{ value: 'unknown' as const, label: t('ask.unknown'), isApart: true }];

/**
 * What may be answered now. Blood comes back within the two minutes, so “as usual” is an answer only after them;
 * a change is told at any time.
 */
export const limbAnswers = (sign: LimbSign, isLater: boolean, isEarly: boolean) => [
  ...(isEarly ? [] : [{ value: 'usual' as const, label: t('limb.usual') }]),
  { value: 'not-usual' as const, label: t('limb.not-usual') },
  ...(isEarly && sign !== 'pulse' ? [] : apart(sign === 'pulse', isLater)),
];

/** Until the time is over the band says to stay seated and look then. */
const SeatedBand = ({ endsAt, clock }: { readonly endsAt: number; readonly clock: () => number }) => (
  <ClockBand
    endsAt={endsAt}
    clock={clock}
    until={t('cuff.seated-until', { time: timeText(endsAt) })}
    over={t('cuff.seated-over')}
  />
);

const LimbQuestion = (props: PageProps & { readonly isLater: boolean }) => {
  const { draft, item: index, send, clock, isLater } = props;
  const item = draft.items[index]!;
  const sign = signOf(props);
  const seatedUntil = (releasedAt(item) ?? 0) + seatedSeconds * 1000;
  const isEarly = useNow(clock, !isLater) < seatedUntil && !isLater;
  const take = (answer: LimbAnswer) => {
    const now = clock();
    send({ type: 'limb', item: index, isLater, sign, answer });
    if (!isLater || answer === 'usual') return send({ type: 'next' });
    if (now < settlesAt(item, now)) return send({ type: 'limb-wait', item: index });
    // Not as usual ten minutes on is itself a warning sign; not known opens the list of them.
    if (answer === 'not-usual')
      return send({ type: 'flags', when: 'now', flags: ['persistent-limb-change-after-release'], now });
    return send({ type: draft.lookedAt.includes(draft.step) ? 'next' : 'unwell' });
  };
  return (
    <>
      {isLater ? null : <SeatedBand endsAt={seatedUntil} clock={clock} />}
      <AnswerPage<LimbAnswer>
        question={limbQuestion(item, sign)}
        hint={
          isEarly
            ? `${t(`limb.${sign}-hint`)} ${t('limb.usual-from', { time: timeText(seatedUntil) })}`
            : t(`limb.${sign}-hint`)
        }
        answers={limbAnswers(sign, isLater, isEarly)}
        given={(isLater ? item.signsLater : item.signs)?.[sign]}
        onAnswer={take}
      />
    </>
  );
};

export const LimbPage = (props: PageProps) => <LimbQuestion {...props} isLater={false} />;

export const LimbLaterPage = (props: PageProps) => {
  const { draft, item: index, clinic, clock, send } = props;
  const item = draft.items[index]!;
  const now = useNow(clock);
  const asksAt = settlesAt(item, now);
  if (now >= asksAt || item.signsLater) return <LimbQuestion {...props} isLater />;
  return (
    <div className="stack">
      <PageHeading>{t('cuff.wait-title')}</PageHeading>
      <div className="clock">
        <p className="clock-figure figure" role="timer">
          {clockText((asksAt - now) / 1000)}
        </p>
        <p className="soft">{t('rest.until', { time: timeText(asksAt) })}</p>
      </div>
      <p>{t('cuff.wait')}</p>
      <Notice tone="care" title={t('cuff.wait-ring')} />
      <LinkButton href={telephone(clinic.phone)} tone="plain" isLarge isWide>
        {t('care.call-clinic', { clinic: clinic.name, phone: clinic.phone })}
      </LinkButton>
      <p>{t('cuff.no-more')}</p>
      <Button tone="plain" isLarge isWide onClick={() => send({ type: 'limb-again', item: index })}>
        {t('limb.again')}
      </Button>
    </div>
  );
};
