/** A group hour that is not of this clinic does not exist here, and neither does an address without one in it. */
import 'server-only';
import { notFound } from 'next/navigation';

const problems: readonly unknown[] = ['not-found', 'refused'];

export const orNotFound = async <T>(asked: Promise<T>): Promise<T> => {
  try {
    return await asked;
  } catch (error) {
    if (typeof error === 'object' && error !== null && 'problem' in error && problems.includes(error.problem))
      notFound();
    throw error;
  }
};
