# The product alone; its database is a container of its own (docker-compose.yml).
FROM node:20.20-bookworm-slim AS build
WORKDIR /scantling
COPY package.json package-lock.json ./
COPY apps/api/package.json apps/api/
COPY apps/web/package.json apps/web/
COPY packages/ packages/
RUN npm ci --no-audit --no-fund
COPY . .
RUN node scripts/generate.mjs && node scripts/build.mjs \
  && npm prune --omit=dev --no-audit --no-fund

FROM node:20.20-bookworm-slim
ENV NODE_ENV=production HOST=0.0.0.0 PORT=4600 SCANTLING_DATA_DIR=/data
WORKDIR /scantling
COPY --from=build /scantling ./
RUN mkdir /data && chown node:node /data
USER node
VOLUME /data
EXPOSE 4600
HEALTHCHECK --interval=10s --timeout=5s --start-period=60s --retries=6 \
  CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT}/api/ready`).then((answer) => process.exit(answer.ok ? 0 : 1), () => process.exit(1))"]
CMD ["node", "--enable-source-maps", "apps/api/dist/server.js"]
