/** Everything that Umberpan needs to work, looked at; nothing is changed. */
import type { Finding } from './finding.ts';
import {
  authorityFinding,
  certificateOf,
  inputFindings,
  networkFinding,
  nodeFinding,
  portFinding,
  serialFinding,
} from './machineFindings.ts';
import { storeFindings } from './storeFindings.ts';

export async function examine(folder: string, port: number, nowMs: number): Promise<Finding[]> {
  const asked = { port, cert: certificateOf(folder) };
  const at = await portFinding(asked);
  return [
    nodeFinding(),
    ...(await storeFindings(folder, nowMs)),
    at.finding,
    networkFinding(),
    authorityFinding(folder, nowMs),
    await serialFinding(),
    ...(at.running ? await inputFindings(asked) : []),
  ];
}
