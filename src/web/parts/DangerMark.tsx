/** The shape that goes with a signal word. */
export function DangerMark() {
  return (
    <svg className="danger-mark" viewBox="0 0 40 36" width="40" height="36" aria-hidden="true">
      <path d="M20 3 37.5 33h-35z" fill="none" stroke="currentColor" strokeWidth="3" strokeLinejoin="round" />
      <path d="M20 13v10M20 27.5v1" stroke="currentColor" strokeWidth="3.5" strokeLinecap="round" />
    </svg>
  );
}
