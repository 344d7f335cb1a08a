'use client';
/** After a set: how near the end it went. A cuff that comes down in each rest is let down here. */
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { AnswerPage } from '#ui/patient/questions/answer-page.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { type ItemDraft, type Score, setOf } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';
import type { PageProps } from './page-props.ts';
import { RestBand } from './rest-band.tsx';

const reserves = [0, 1, 2, 3, 4, 5] as const;

const ReserveQuestion = ({ draft, item: index, set, send, clock }: PageProps) => {
  const item = draft.items[index]!;
  return (
    <>
      <RestBand item={item} set={set} clock={clock} />
      <AnswerPage<Score>
        question={t('rest.reserve')}
        isInRows
        answers={[
          ...reserves.map((value) => ({
            value,
            label: t(`rest.reserve-${value}`),
            figure: value === 0 ? undefined : value,
            under: value === 5 ? t('rest.or-more') : undefined,
          })),
          { value: 'unknown', label: t('ask.unknown'), isApart: true },
        ]}
        given={setOf(item, set).reserve}
        onAnswer={(reserve) => {
          send({ type: 'reserve', item: index, set, reserve });
          send({ type: 'next' });
        }}
      />
    </>
  );
};

const LetDown = ({
  item,
  index,
  set,
  send,
  clock,
}: { item: ItemDraft; index: number } & Pick<PageProps, 'set' | 'send' | 'clock'>) => (
  <>
    <RestBand item={item} set={set} clock={clock} />
    <div className="stack">
      <PageHeading caption={translate(item.title)}>{t('rest.title')}</PageHeading>
      <Button
        isLarge
        isWide
        onClick={() => {
          if (isCuffOn(item)) send({ type: 'cuff-down', item: index, now: clock() });
          send({ type: 'next' });
        }}
      >
        {t(isCuffOn(item) ? 'cuff.down' : 'ask.continue')}
      </Button>
    </div>
  </>
);

export const RestPage = (props: PageProps) => {
  const item = props.draft.items[props.item]!;
  return item.dose.method === 'occlusion' ? (
    <LetDown {...props} item={item} index={props.item} />
  ) : (
    <ReserveQuestion {...props} />
  );
};
