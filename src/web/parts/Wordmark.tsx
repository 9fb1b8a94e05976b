/** The mark: a pan from the side and a drop above it. */
export function Wordmark() {
  return (
    <svg viewBox="0 0 32 32" aria-hidden="true">
      <path
        d="M3 13.5h17.5V21a4 4 0 0 1-4 4H7a4 4 0 0 1-4-4v-7.5M20.5 15.5 30 12"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
      <path d="M11.75 2.2c1.9 2.6 3 4.3 3 5.8a3 3 0 1 1-6 0c0-1.5 1.1-3.2 3-5.8z" fill="currentColor" />
    </svg>
  );
}
