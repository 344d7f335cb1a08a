'use client';
/** The frame of the pages before anybody is signed in, in the language chosen on this phone. */
import type { ReactNode } from 'react';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { t } from '#ui/language/words.ts';
import type { Chosen } from './preferences/chosen.ts';
import { InOwnWords } from './preferences/in-own-words.tsx';
import { OtherLanguages } from './preferences/other-languages.tsx';

export interface PublicFrameProps {
  readonly chosen: Chosen;
  readonly children: ReactNode;
}

const Frame = ({ children }: Pick<PublicFrameProps, 'children'>) => (
  <PageFrame audience="public" skipText={t('skip.main')}>
    <OtherLanguages />
    {children}
  </PageFrame>
);

export const PublicFrame = ({ chosen, children }: PublicFrameProps) => (
  <InOwnWords chosen={chosen}>
    <Frame>{children}</Frame>
  </InOwnWords>
);
