// Nothing but a cook's log, for a test to hold in a real browser.
import { beginCook, cooksHere, openCookLog } from '../../../src/web/records/cookLog/openCookLog.ts';

const all = { beginCook, cooksHere, openCookLog };
export type CookLogPage = typeof all & { log: Awaited<ReturnType<typeof openCookLog>> };
Object.assign(window, all);
