/** Buttons act, links go somewhere; both can look alike. */
import type { ComponentProps } from 'react';

type ButtonTone = 'primary' | 'plain' | 'tint' | 'stop' | 'quiet';

interface Look {
  readonly tone?: ButtonTone;
  /** Fills the line. */
  readonly isWide?: boolean;
  /** 60 px high, for the one thing to do on a page. */
  readonly isLarge?: boolean;
}

const look = ({ tone = 'primary', isWide, isLarge }: Look, more = ''): string =>
  [
    'button',
    tone === 'primary' ? '' : `button-${tone}`,
    isWide ? 'button-wide' : '',
    isLarge ? 'button-large' : '',
    more,
  ]
    .filter(Boolean)
    .join(' ');

export type ButtonProps = Look & ComponentProps<'button'>;

export const Button = ({ tone, isWide, isLarge, className, type = 'button', ...rest }: ButtonProps) => (
  <button {...rest} type={type} className={look({ tone, isWide, isLarge }, className)} />
);

export type LinkButtonProps = Look & ComponentProps<'a'> & { readonly href: string };

export const LinkButton = ({ tone, isWide, isLarge, className, children, ...rest }: LinkButtonProps) => (
  <a {...rest} className={look({ tone, isWide, isLarge }, className)}>
    {children}
  </a>
);
