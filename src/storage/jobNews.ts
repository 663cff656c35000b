/** What one window tells the others of a job: that it was written or removed (revision null), is being opened, or is open. */
export interface JobNews {
  readonly id: string;
  readonly revision?: number | null;
  readonly asks?: true;
  readonly isOpen?: true;
}

export interface JobNewsLine {
  tell(news: JobNews): void;
  listen(heard: (news: JobNews) => void): void;
  close(): void;
}

/** The line between this browser's windows. What one end tells is heard at every other, in this window too. */
export function jobNews(): JobNewsLine {
  const channel = new BroadcastChannel('crosscoat-jobs');
  return {
    tell: (news) => channel.postMessage(news),
    listen: (heard) => (channel.onmessage = ({ data }: MessageEvent<JobNews>) => heard(data)),
    close: () => channel.close(),
  };
}
