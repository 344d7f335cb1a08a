'use client';
/** Rest by the clock on the wall; meanwhile, how near the end the set went. */
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { clockText, timeText } from '#ui/language/text-of-time.ts';
import { useBuzz, useNow } from '#ui/patient/phone/use-now.ts';
import { t, translate } from '#ui/patient/words.ts';
import { type Score, setOf } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import type { PageProps } from './page-props.ts';

const reserves = ['0', '1', '2', '3', '4', '5'] as const;

const ReserveQuestion = ({ draft, item, set, send }: PageProps) => {
  const chosen = setOf(draft.items[item]!, set).reserve;
  return (
    <RadioGroup<string>
      name="reserve"
      legend={t('rest.reserve')}
      hint={t('rest.reserve-hint')}
      options={[
        ...reserves.map((value) => ({ value, label: t(`rest.reserve-${value}`) })),
        { value: 'unknown', label: t('ask.unknown'), isApart: true },
      ]}
      chosen={chosen === null ? null : String(chosen)}
      onChoose={(value) => {
        const reserve: Score = value === 'unknown' ? value : Number(value);
        send({ type: 'reserve', item, set, reserve });
      }}
    />
  );
};

interface RestClockProps {
  readonly endsAt: number;
  readonly clock: () => number;
}

const RestClock = ({ endsAt, clock }: RestClockProps) => {
  const now = useNow(clock);
  const left = (endsAt - now) / 1000;
  useBuzz(left <= 0);
  return (
    <div className="clock">
      <p className="clock-figure figure" role="timer">
        {clockText(left)}
      </p>
      <p className="soft" aria-live="polite">
        {left > 0 ? t('rest.until', { time: timeText(endsAt) }) : t('rest.over')}
      </p>
    </div>
  );
};

export const RestPage = (props: PageProps) => {
  const { draft, item: index, set, send, clock } = props;
  const item = draft.items[index]!;
  const isLast = set >= item.dose.sets;
  const isCuff = item.dose.method === 'occlusion';
  const { finishedAt } = setOf(item, set);
  const letsDown = item.dose.method === 'occlusion' && item.dose.inflation === 'intermittent';
  return (
    <div className="stack">
      <PageHeading caption={translate(item.title)}>
        {t(isLast ? 'set.caption' : 'rest.title', { set, of: item.dose.sets })}
      </PageHeading>
      {isLast || finishedAt === null ? null : (
        <RestClock endsAt={finishedAt + item.dose.restSeconds * 1000} clock={clock} />
      )}
      {letsDown && isCuffOn(item) ? (
        <Button isLarge isWide onClick={() => send({ type: 'cuff-down', item: index, now: clock() })}>
          {t('cuff.down')}
        </Button>
      ) : null}
      {item.dose.method === 'occlusion' && item.dose.pulseShown && isCuffOn(item) ? (
        <p>{t('cuff.pulse-rest', { where: item.dose.limb })}</p>
      ) : null}
      {isCuff ? null : <ReserveQuestion {...props} />}
      <Button isLarge isWide onClick={() => send({ type: 'next' })}>
        {isLast ? t('rest.go-on') : t('rest.next', { set: set + 1 })}
      </Button>
    </div>
  );
};
