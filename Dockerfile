# Stage 1: compile with all dependencies.
FROM node:24-bookworm-slim AS build
# What better-sqlite3 is compiled with where its binary cannot be fetched.
RUN apt-get update && apt-get install -y --no-install-recommends python3 make g++ && rm -rf /var/lib/apt/lists/*
WORKDIR /app
COPY package.json package-lock.json ./
RUN npm ci --no-audit --no-fund
COPY tsconfig.json ./
COPY src ./src
RUN npm run build

# Stage 2: the dependencies that run.
FROM build AS dependencies
RUN npm prune --omit=dev --no-audit --no-fund

# Stage 3: what is shipped. Writes nothing but what is kept in /data, so that the root file system can be read-only.
# Since it listens to other machines, every call under /v1 needs an API key: docs/keys.md.
FROM node:24-bookworm-slim
ENV NODE_ENV=production HOST=0.0.0.0 PORT=8080 DATA_DIR=/data
RUN mkdir /data && chown node:node /data
VOLUME /data
WORKDIR /app
COPY --from=dependencies /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
COPY package.json ./
USER node
EXPOSE 8080
HEALTHCHECK --interval=30s --timeout=3s --start-period=10s \
  CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT}/livez`).then(({ ok }) => process.exit(ok ? 0 : 1), () => process.exit(1))"]
CMD ["node", "--disable-warning=ExperimentalWarning", "dist/main.js"]
