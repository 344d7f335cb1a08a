'use client';
/** The frame of the patient's pages, in the person's own language. */
import type { ReactNode } from 'react';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { t } from '#ui/language/words.ts';
import { PatientSignOut } from './patient-sign-out.tsx';
import type { Chosen } from './preferences/chosen.ts';
import { InOwnWords } from './preferences/in-own-words.tsx';

type PatientPage =
  | '/today'
  | '/history'
  | '/handout'
  | '/access-log'
  | '/account'
  | '/pre-visit'
  | '/pre-visit/consents'
  | '/messages';

export interface OwnPageProps {
  readonly place?: string;
  readonly chosen: Chosen;
  readonly children: ReactNode;
}

export interface PatientFrameProps extends OwnPageProps {
  readonly current: PatientPage;
}

const daily = [
  { href: '/today', text: 'frame.today' },
  { href: '/history', text: 'history.title' },
  { href: '/handout', text: 'frame.handout' },
] as const;
/** Opened seldom: reached from the foot of today's page, and shown here only beside each other. */
const seldom = {
  '/access-log': [
    { href: '/access-log', text: 'opened.title' },
    { href: '/account', text: 'frame.account' },
  ],
  '/pre-visit': [
    { href: '/pre-visit', text: 'visit.title' },
    { href: '/pre-visit/consents', text: 'consent.title' },
  ],
} as const;

const linksOf = (current: PatientPage) => {
  const [today] = daily;
  const near = Object.values(seldom).find((links) => links.some(({ href }) => href === current));
  return (near ? [today, ...near] : daily).map(({ href, text }) => ({
    href,
    text: t(text),
    isCurrent: href === current,
  }));
};

const Frame = ({ current, place, children }: Omit<PatientFrameProps, 'chosen'>) => (
  <PageFrame
    audience="patient"
    homeHref="/today"
    place={place}
    links={linksOf(current)}
    foot={<PatientSignOut />}
    skipText={t('skip.main')}
    pagesText={t('skip.pages')}
  >
    {children}
  </PageFrame>
);

export const PatientFrame = ({ chosen, ...props }: PatientFrameProps) => (
  <InOwnWords chosen={chosen}>
    <Frame {...props} />
  </InOwnWords>
);
