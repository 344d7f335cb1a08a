'use client';
/** Something has changed: a warning sign first, then where, since when, and in the patient's own words. */
import '../asked-words.ts';
import '../today/seldom-words.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { Button } from '#ui/design-system/button.tsx';
import { t } from '#ui/language/words.ts';
import { Advice } from '../questions/calls.tsx';
import { flagClassOf } from '../questions/flag-list.ts';
import { ConfirmSigns, SignsPage } from '../questions/signs-page.tsx';
import { CareAdvice } from '../session/pages/end-pages.tsx';
import { BeganPage, PlacePage, SentPage, WordsPage } from './change-pages.tsx';
import { type ChangedScreenProps, type ChangePage, useChange } from './use-change.ts';

const SignPage = ({ change: { draft, say }, clinic, hasCuff, onStep }: ChangePage) => (
  <SignsPage
    isShort={false}
    question={t('flags.now')}
    clinic={clinic}
    hasCuff={hasCuff}
    ticked={draft.ticked}
    noneText={t('flags.no-none')}
    onTick={(ticked) => say({ ticked: ticked as readonly RedFlag[] })}
    onAnswer={(flags) => onStep(flags.length === 0 ? 'place' : 'confirm')}
    onWholeList={() => undefined}
  />
);

/** The advice stands at once; where and since when can be added under it. */
const CarePage = ({ change: { told }, clinic, arrivalOf, onStep, onHome }: ChangePage) => (
  <div className="stack">
    <CareAdvice
      flags={told.flags}
      clinic={clinic}
      isCuffOn={false}
      arrival={arrivalOf(told.signId ?? '')}
      onHome={onHome}
    />
    <Button tone="quiet" onClick={() => onStep('place')}>
      {t('changed.more')}
    </Button>
  </div>
);

const pages = { place: PlacePage, began: BeganPage, words: WordsPage } as const;

export const ChangedScreen = (props: ChangedScreenProps) => {
  const change = useChange(props);
  const { step, clinic } = props;
  const { told, draft } = change;
  const page = { ...props, change };
  if (told.noteId !== null) return <SentPage {...page} />;
  const Page = pages[step as keyof typeof pages];
  if (Page) return <Page {...page} />;
  if (told.signId !== null) return <CarePage {...page} />;
  if (step !== 'confirm' || draft.ticked.length === 0) return <SignPage {...page} />;
  return (
    <ConfirmSigns
      flags={draft.ticked}
      advice={<Advice level={flagClassOf(draft.ticked)} clinic={clinic} />}
      onAnswer={change.confirm}
    />
  );
};
