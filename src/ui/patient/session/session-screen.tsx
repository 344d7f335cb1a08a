'use client';
/** The session on screen: the page of the present step, and over it whatever the cuff needs. */
import type { ComponentType, ReactNode } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { Button } from '#ui/design-system/button.tsx';
import { clockText, timeText } from '#ui/language/text-of-time.ts';
import { useCuffAlarm } from '../cuff-alarm/use-cuff-alarm.ts';
import type { Arrival } from '../day-state.ts';
import { useNow, useScreenAwake } from '../phone/use-now.ts';
import { useSteadyClock } from '../phone/use-steady-clock.ts';
import '../asked-words.ts';
import { ByEar } from '../by-ear/by-ear.tsx';
import { t } from '../words.ts';
import { useAboveKeyboard } from './above-keyboard.ts';
import type { SessionDraft } from './draft.ts';
import type { SessionEvent } from './events.ts';
import {
  BurnPage,
  CuffBotherPage,
  ExtraPage,
  GaveWayPage,
  PainAfterPage,
  PainDuringPage,
  StatementPage,
} from './pages/after-pages.tsx';
import {
  NewsPage,
  OfferPage,
  OtherJointPage,
  PainBeforePage,
  ReliefPage,
  UsualPage,
} from './pages/before-pages.tsx';
import { CuffOffPage, CuffOnPage } from './pages/cuff-pages.tsx';
import { CarePage, CheckPage, DonePage } from './pages/end-pages.tsx';
import { ConfirmPage, FlagsBeforePage, FlagsDuringPage, FlagsNowPage } from './pages/flag-pages.tsx';
import { ItemPage } from './pages/item-page.tsx';
import { LimbLaterPage, LimbPage } from './pages/limb-pages.tsx';
import type { PageProps } from './pages/page-props.ts';
import { StopAdvicePage } from './pages/pain-advice.tsx';
import { RestPage } from './pages/rest-page.tsx';
import { SetPage } from './pages/set-page.tsx';
import { StopCountPage, StopNextPage, StopPage, StopPainPage } from './pages/stop-pages.tsx';
import { isCuffOn, isTimeUp, longestSeconds, restrictedSeconds } from './restriction.ts';
import { partsOf, type StepName } from './step-names.ts';
import { reachedSets } from './steps.ts';

const pages: Readonly<Record<StepName, ComponentType<PageProps>>> = {
  'flags-before': FlagsBeforePage,
  'flags-during': FlagsDuringPage,
  'flags-now': FlagsNowPage,
  confirm: ConfirmPage,
  before: PainBeforePage,
  usual: UsualPage,
  'other-joint': OtherJointPage,
  relief: ReliefPage,
  news: NewsPage,
  offer: OfferPage,
  item: ItemPage,
  'cuff-on': CuffOnPage,
  set: SetPage,
  'stop-count': StopCountPage,
  stop: StopPage,
  'stop-pain': StopPainPage,
  'stop-advice': StopAdvicePage,
  'stop-next': StopNextPage,
  rest: RestPage,
  'cuff-off': CuffOffPage,
  limb: LimbPage,
  'limb-later': LimbLaterPage,
  during: PainDuringPage,
  after: PainAfterPage,
  'gave-way': GaveWayPage,
  burn: BurnPage,
  cuff: CuffBotherPage,
  statement: StatementPage,
  extra: ExtraPage,
  check: CheckPage,
};

/** Pages of work, on which "I feel unwell" stands at the foot. */
const work: readonly StepName[] = [
  'item',
  'cuff-on',
  'set',
  'stop-count',
  'stop',
  'stop-pain',
  'stop-advice',
  'stop-next',
  'rest',
  'limb',
  'limb-later',
];

/** A question is left by Back, or with the phone; every answer stands. Work is left by a way of its own. */
const canPause = (name: StepName): boolean => name === 'offer' || (work.includes(name) && name !== 'rest');

export interface SessionScreenProps {
  readonly draft: SessionDraft;
  readonly clinic: PageProps['clinic'];
  readonly hasCuff: PageProps['hasCuff'];
  readonly asksPregnancy: PageProps['asksPregnancy'];
  readonly clock: () => number;
  readonly send: (event: SessionEvent) => void;
  readonly arrival: Arrival;
  readonly onHome: () => void;
}

/** Time with the cuff on and the button that takes it off; nothing on the page lies over it. */
const CuffBar = ({
  draft,
  index,
  clock,
  wall,
  send,
  children,
}: Omit<PageProps, 'joint' | 'item' | 'set' | 'clinic' | 'hasCuff' | 'asksPregnancy'> & {
  index: number;
  wall: () => number;
  children: ReactNode;
}) => {
  const item = draft.items[index]!;
  const now = useNow(clock);
  const left = Math.max(0, longestSeconds(item) - restrictedSeconds(item, now));
  const bar = useAboveKeyboard();
  const { item: at, set } = partsOf(draft.step);
  const stop = () =>
    send({
      type: 'cuff-stop',
      item: index,
      set: at === index && set > 0 ? set : Math.max(1, reachedSets(item)),
    });
  return (
    <section ref={bar} className="cuff-bar" aria-label={t('cuff.clock')}>
      <p className="cuff-bar-time">
        <span className="figure cuff-bar-figure">{clockText(left)}</span>
        <span className="cuff-bar-by">{t('cuff.off-by', { time: timeText(wall() + left * 1000) })}</span>
      </p>
      {children}
      <Button tone="stop" isLarge onClick={stop}>
        {t('cuff.stop')}
      </Button>
    </section>
  );
};

/** `clock` never runs back; `wall` is the time of day that is told. */
const Shown = (props: SessionScreenProps & { readonly wall: () => number }) => {
  const { draft, clinic, hasCuff, asksPregnancy, clock, wall, send } = props;
  const isOver = draft.endedAt !== null;
  useScreenAwake(!isOver);
  const cuffIndex = draft.items.findIndex(isCuffOn);
  const now = useNow(clock, cuffIndex >= 0 && !isOver);
  const isUp = !isOver && cuffIndex >= 0 && isTimeUp(draft.items[cuffIndex]!, now);
  useCuffAlarm(draft, clock, isUp);
  const { name, joint, item, set } = partsOf(draft.step);
  if (isOver) return draft.stoppedByFlag ? <CarePage {...props} /> : <DonePage {...props} />;
  const shown = { draft, clinic, hasCuff, asksPregnancy };
  const page = { ...shown, joint: joint as Joint, item, set, send, clock };
  // A list of warning signs may be finished; everything else waits until the cuff is off.
  if (isUp && name !== 'flags-now' && name !== 'confirm') return <CuffOffPage {...page} item={cuffIndex} />;
  const Page = pages[name];
  // While a cuff is on it stands in the bar: nothing may lie over it.
  const hasBar = cuffIndex >= 0 && name !== 'cuff-off';
  const unwell = work.includes(name) ? (
    <Button tone="plain" onClick={() => send({ type: 'unwell' })}>
      {t('wrong.button')}
    </Button>
  ) : null;
  return (
    <div className="step">
      <Page key={draft.step} {...page} />
      {hasBar ? (
        <CuffBar draft={draft} index={cuffIndex} clock={clock} wall={wall} send={send}>
          {unwell}
        </CuffBar>
      ) : (
        <div className="session-foot">
          {unwell}
          {cuffIndex < 0 && canPause(name) ? (
            <Button tone="quiet" onClick={props.onHome}>
              {t('session.pause')}
            </Button>
          ) : null}
        </div>
      )}
    </div>
  );
};

export const SessionScreen = (props: SessionScreenProps) => {
  const clock = useSteadyClock(props.clock, props.draft.entryId);
  return (
    <>
      {props.draft.endedAt === null ? <ByEar draft={props.draft} clock={clock} /> : null}
      <Shown {...props} wall={props.clock} clock={clock} />
    </>
  );
};
