import { hash } from 'node:crypto';

/** SHA-256 of a text's UTF-8 bytes, in hexadecimal. */
export function sha256(text: string): string {
  return hash('sha256', text, 'hex');
}
