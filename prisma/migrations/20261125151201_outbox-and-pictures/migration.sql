-- CreateTable
CREATE TABLE "OutboxMail" (
    "id" TEXT NOT NULL,
    "event" TEXT NOT NULL,
    "aboutKind" TEXT NOT NULL,
    "aboutId" TEXT NOT NULL,
    "toName" TEXT NOT NULL,
    "toAddress" TEXT NOT NULL,
    "replyTo" TEXT,
    "subject" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "messageId" TEXT NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'waiting',
    "attempts" INTEGER NOT NULL DEFAULT 0,
    "nextAttemptAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "claim" TEXT,
    "claimedUntil" TIMESTAMP(3),
    "lastError" TEXT,
    "serverReply" TEXT,
    "sentFrom" TEXT,
    "sentAt" TIMESTAMP(3),
    "copyOf" TEXT,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "OutboxMail_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "MailAttachment" (
    "mailId" TEXT NOT NULL,
    "documentId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,

    CONSTRAINT "MailAttachment_pkey" PRIMARY KEY ("mailId","position")
);

-- CreateTable
CREATE TABLE "Picture" (
    "sha256" TEXT NOT NULL,
    "mediaType" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "bytes" BYTEA NOT NULL,
    "thumbnail" BYTEA NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Picture_pkey" PRIMARY KEY ("sha256")
);

-- CreateIndex
CREATE UNIQUE INDEX "OutboxMail_event_key" ON "OutboxMail"("event");

-- CreateIndex
CREATE UNIQUE INDEX "OutboxMail_messageId_key" ON "OutboxMail"("messageId");

-- CreateIndex
CREATE INDEX "OutboxMail_state_nextAttemptAt_idx" ON "OutboxMail"("state", "nextAttemptAt");

-- CreateIndex
CREATE INDEX "OutboxMail_aboutKind_aboutId_idx" ON "OutboxMail"("aboutKind", "aboutId");

-- CreateIndex
CREATE INDEX "MailAttachment_documentId_idx" ON "MailAttachment"("documentId");

-- AddForeignKey
ALTER TABLE "MailAttachment" ADD CONSTRAINT "MailAttachment_mailId_fkey" FOREIGN KEY ("mailId") REFERENCES "OutboxMail"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MailAttachment" ADD CONSTRAINT "MailAttachment_documentId_fkey" FOREIGN KEY ("documentId") REFERENCES "StoredDocument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
