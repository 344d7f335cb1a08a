/** The thread that works out what other settings would have said: our own sources, read as the commands read them. */
import { parentPort } from 'node:worker_threads';
import { register } from 'tsx/esm/api';

register();
const { answerOn } = await import('./in-thread.ts');
answerOn(parentPort);
