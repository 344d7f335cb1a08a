'use client';
/** A form that works before its page’s scripts have come: the browser sends it to a route of its own. */
import type { ComponentProps } from 'react';
import { aboutName, type PostedTexts } from '#api/inputs/posted-form.ts';
import { usePosted } from './posted.tsx';

export interface PostedFormProps extends Omit<ComponentProps<'form'>, 'action' | 'method' | 'about'> {
  /** As the route knows it. */
  readonly form: string;
  readonly about?: PostedTexts;
}

export const PostedForm = ({ form, about = {}, children, ...props }: PostedFormProps) => {
  const posted = usePosted(form, about);
  return (
    <form
      {...props}
      {...(posted?.isNewest ? { id: 'posted' } : {})}
      method="post"
      action={`/forms/${form}`}
      noValidate
    >
      {Object.entries(about).map(([name, value]) => (
        <input key={name} type="hidden" name={aboutName(name)} value={value} />
      ))}
      {children}
    </form>
  );
};
