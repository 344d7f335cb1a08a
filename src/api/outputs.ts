/** What most changes answer. */
import { z } from 'zod';

export const nothing = z.void();

/** Of what was made. */
export const madeId = z.string();
