import type { Message } from '../contracts/message.ts';
import type { Reply, Silence } from '../contracts/reply.ts';

/** All that an adapter knows of the rest: a message goes in, a reply or silence comes out. It never rejects for bad input. */
export type Respond = (message: Message) => Promise<Reply | Silence>;

export const isSilence = (reply: Reply | Silence): reply is Silence => 'silent' in reply;
