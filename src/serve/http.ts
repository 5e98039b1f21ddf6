/** Health and metrics for whoever runs the program; the webhook of Telegram is heard on the same port. */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface Health {
  /** The process is well. */
  live(): boolean;
  /** It can answer: the store is open, the platforms are connected. */
  ready(): Promise<boolean>;
  metrics(): Promise<{ readonly type: string; readonly text: string }>;
}

export type Handler = (request: IncomingMessage, response: ServerResponse) => Promise<void>;

export interface HttpServer {
  readonly port: number;
  /** Hears what is not health or metrics. */
  hear(handler: Handler): void;
  close(): Promise<void>;
}

const plain = { 'content-type': 'text/plain; charset=utf-8' };

export async function openHttp(port: number, host: string, health: Health): Promise<HttpServer> {
  let other: Handler | undefined;
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    if (request.method === 'GET' || request.method === 'HEAD') {
      switch (request.url) {
        case '/live':
          response.writeHead(health.live() ? 200 : 503, plain).end(health.live() ? 'live\n' : 'not live\n');
          return;
        case '/ready': {
          const ready = await health.ready();
          response.writeHead(ready ? 200 : 503, plain).end(ready ? 'ready\n' : 'not ready\n');
          return;
        }
        case '/metrics': {
          const { type, text } = await health.metrics();
          response.writeHead(200, { 'content-type': type }).end(text);
          return;
        }
      }
    }
    if (other === undefined) response.writeHead(404, plain).end('not here\n');
    else await other(request, response);
  };
  const server: Server = createServer(
    { requestTimeout: 10_000, headersTimeout: 5000 },
    (request, response) => {
      answer(request, response).catch(() => {
        if (!response.headersSent) response.writeHead(500, plain).end('failed\n');
      });
    },
  );
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, resolve);
  });
  return {
    port: (server.address() as AddressInfo).port,
    hear(handler) {
      other = handler;
    },
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeIdleConnections();
      }),
  };
}
