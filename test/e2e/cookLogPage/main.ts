// Nothing but a cook's log, for a test to hold in a real browser.
import { beginCook, cooksHere, openCookLog } from '../../../src/web/records/cookLog/openCookLog.ts';
import { holdPass } from '../../../src/web/records/pass.ts';

const all = { beginCook, cooksHere, openCookLog, holdPass };
export type CookLogPage = typeof all & { log: Awaited<ReturnType<typeof openCookLog>> };
Object.assign(window, all);
