-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "role" TEXT NOT NULL DEFAULT 'read-only',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "User_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "userId" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Account" (
    "id" TEXT NOT NULL,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" TIMESTAMP(3),
    "refreshTokenExpiresAt" TIMESTAMP(3),
    "scope" TEXT,
    "password" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Verification" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Verification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ApiToken" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "prefix" TEXT NOT NULL,
    "createdById" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "lastUsedAt" TIMESTAMP(3),
    "revokedAt" TIMESTAMP(3),

    CONSTRAINT "ApiToken_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SetUpLink" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "hash" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "SetUpLink_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "IdempotentAnswer" (
    "id" TEXT NOT NULL,
    "actor" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "route" TEXT NOT NULL,
    "requestHash" TEXT NOT NULL,
    "status" INTEGER,
    "body" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "IdempotentAnswer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Workshop" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "name" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "unitSystem" TEXT NOT NULL DEFAULT 'metric',
    "settings" JSONB NOT NULL,
    "hasDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Workshop_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LabourGrade" (
    "id" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "payPerHour" DECIMAL(18,6) NOT NULL,
    "burden" DECIMAL(9,6) NOT NULL,
    "productiveShare" DECIMAL(9,6) NOT NULL,
    "isOwner" BOOLEAN NOT NULL DEFAULT false,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "LabourGrade_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Person" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "gradeId" TEXT NOT NULL,
    "paidHoursPerYear" DECIMAL(9,2) NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Tool" (
    "id" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "acquisition" TEXT NOT NULL,
    "acquiredOn" DATE NOT NULL,
    "bookCost" DECIMAL(18,6) NOT NULL,
    "replacementCost" DECIMAL(18,6) NOT NULL,
    "salvage" DECIMAL(18,6) NOT NULL,
    "lifeYears" DECIMAL(9,3) NOT NULL,
    "lifeHours" DECIMAL(12,3),
    "hoursPerYear" DECIMAL(9,3) NOT NULL,
    "depreciationMethod" TEXT NOT NULL,
    "depreciationSettings" JSONB NOT NULL DEFAULT '{}',
    "interestRate" DECIMAL(9,6) NOT NULL,
    "insuranceTaxRate" DECIMAL(9,6) NOT NULL,
    "floorAreaM2" DECIMAL(9,3) NOT NULL DEFAULT 0,
    "ratedKw" DECIMAL(9,3) NOT NULL DEFAULT 0,
    "load" DECIMAL(9,6) NOT NULL DEFAULT 0,
    "maintenanceShare" DECIMAL(9,6) NOT NULL DEFAULT 0,
    "maintenanceByHours" DECIMAL(9,6) NOT NULL DEFAULT 1,
    "hirePerHour" DECIMAL(18,6),
    "cutters" JSONB NOT NULL DEFAULT '[]',
    "attached" TEXT[],
    "soldOn" DATE,
    "soldFor" DECIMAL(18,6),
    "notes" TEXT NOT NULL DEFAULT '',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Tool_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "OverheadAmount" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "yearlyAmount" DECIMAL(18,6) NOT NULL,
    "home" TEXT NOT NULL,
    "recoveredAs" TEXT,
    "note" TEXT NOT NULL DEFAULT '',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "OverheadAmount_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Client" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT,
    "address" TEXT NOT NULL DEFAULT '',
    "notes" TEXT NOT NULL DEFAULT '',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Client_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Supplier" (
    "id" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "taxIncluded" BOOLEAN NOT NULL DEFAULT false,
    "taxRate" DECIMAL(9,6) NOT NULL DEFAULT 0,
    "taxRecoverable" DECIMAL(9,6) NOT NULL DEFAULT 1,
    "minimumOrder" DECIMAL(18,6),
    "freightPerOrder" DECIMAL(18,6),
    "leadDays" INTEGER,
    "notes" TEXT NOT NULL DEFAULT '',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Supplier_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Material" (
    "id" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "form" TEXT NOT NULL,
    "family" TEXT,
    "species" TEXT,
    "grade" TEXT,
    "quarter" TEXT,
    "nominalThicknessMm" DECIMAL(12,6),
    "surfacedThicknessMm" DECIMAL(12,6),
    "thicknessMm" DECIMAL(12,6),
    "widthMm" DECIMAL(12,6),
    "lengthMm" DECIMAL(12,6),
    "densityKgM3" DECIMAL(12,6),
    "yieldFactor" DECIMAL(9,6),
    "offcutValueShare" DECIMAL(9,6),
    "packContent" DECIMAL(18,6),
    "boardContent" DECIMAL(12,6),
    "finish" JSONB,
    "preferredSupplierId" TEXT,
    "notes" TEXT NOT NULL DEFAULT '',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Material_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SupplierItem" (
    "id" TEXT NOT NULL,
    "supplierId" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "materialId" TEXT,

    CONSTRAINT "SupplierItem_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PriceList" (
    "id" TEXT NOT NULL,
    "supplierId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "validFrom" DATE NOT NULL,
    "validTo" DATE,
    "currency" TEXT NOT NULL,
    "isComplete" BOOLEAN NOT NULL DEFAULT false,
    "taxIncluded" BOOLEAN NOT NULL,
    "taxRate" DECIMAL(9,6) NOT NULL,
    "taxRecoverable" DECIMAL(9,6) NOT NULL,
    "sourceName" TEXT NOT NULL DEFAULT '',
    "sourceSha256" TEXT NOT NULL DEFAULT '',
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "PriceList_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PriceLine" (
    "id" TEXT NOT NULL,
    "listId" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "breakFrom" DECIMAL(18,6) NOT NULL DEFAULT 0,
    "breakKind" TEXT NOT NULL DEFAULT 'all-units',
    "amount" DECIMAL(18,6) NOT NULL,
    "packSize" DECIMAL(18,6),
    "minimumQuantity" DECIMAL(18,6),
    "leadDays" INTEGER,
    "rowNumber" INTEGER NOT NULL,

    CONSTRAINT "PriceLine_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ExchangeRate" (
    "id" TEXT NOT NULL,
    "onDate" DATE NOT NULL,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL,
    "rate" DECIMAL(20,10) NOT NULL,
    "source" TEXT NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "ExchangeRate_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ImportMapping" (
    "id" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "supplierId" TEXT NOT NULL DEFAULT '',
    "mapping" JSONB NOT NULL,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "ImportMapping_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "FileImport" (
    "id" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "supplierId" TEXT,
    "designId" TEXT,
    "fileName" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "status" TEXT NOT NULL,
    "settings" JSONB NOT NULL,
    "rowsRead" INTEGER NOT NULL DEFAULT 0,
    "bytesRead" INTEGER NOT NULL DEFAULT 0,
    "bytesTotal" INTEGER NOT NULL DEFAULT 0,
    "summary" JSONB,
    "problem" TEXT,
    "content" BYTEA,
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "FileImport_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "FileImportRow" (
    "id" BIGSERIAL NOT NULL,
    "importId" TEXT NOT NULL,
    "rowNumber" INTEGER NOT NULL,
    "change" TEXT NOT NULL,
    "data" JSONB NOT NULL,
    "problems" JSONB,

    CONSTRAINT "FileImportRow_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Design" (
    "id" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "description" TEXT NOT NULL DEFAULT '',
    "unitSystem" TEXT NOT NULL DEFAULT 'metric',
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "Design_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "DesignRevision" (
    "id" TEXT NOT NULL,
    "designId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "bill" JSONB NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "createdBy" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "DesignRevision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CostSheet" (
    "id" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "designId" TEXT NOT NULL,
    "clientId" TEXT,
    "basis" TEXT NOT NULL,
    "onDate" DATE,
    "quantities" INTEGER[],
    "terms" JSONB NOT NULL,
    "isDemo" BOOLEAN NOT NULL DEFAULT false,
    "version" INTEGER NOT NULL DEFAULT 1,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "CostSheet_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "User_email_key" ON "User"("email");

-- CreateIndex
CREATE UNIQUE INDEX "Session_token_key" ON "Session"("token");

-- CreateIndex
CREATE INDEX "Session_userId_idx" ON "Session"("userId");

-- CreateIndex
CREATE INDEX "Account_userId_idx" ON "Account"("userId");

-- CreateIndex
CREATE INDEX "Verification_identifier_idx" ON "Verification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "ApiToken_hash_key" ON "ApiToken"("hash");

-- CreateIndex
CREATE INDEX "IdempotentAnswer_createdAt_idx" ON "IdempotentAnswer"("createdAt");

-- CreateIndex
CREATE UNIQUE INDEX "IdempotentAnswer_actor_key_key" ON "IdempotentAnswer"("actor", "key");

-- CreateIndex
CREATE UNIQUE INDEX "LabourGrade_code_key" ON "LabourGrade"("code");

-- CreateIndex
CREATE INDEX "Person_gradeId_idx" ON "Person"("gradeId");

-- CreateIndex
CREATE UNIQUE INDEX "Tool_code_key" ON "Tool"("code");

-- CreateIndex
CREATE UNIQUE INDEX "OverheadAmount_name_key" ON "OverheadAmount"("name");

-- CreateIndex
CREATE UNIQUE INDEX "Supplier_code_key" ON "Supplier"("code");

-- CreateIndex
CREATE UNIQUE INDEX "Material_code_key" ON "Material"("code");

-- CreateIndex
CREATE INDEX "Material_family_idx" ON "Material"("family");

-- CreateIndex
CREATE INDEX "Material_preferredSupplierId_idx" ON "Material"("preferredSupplierId");

-- CreateIndex
CREATE INDEX "SupplierItem_materialId_idx" ON "SupplierItem"("materialId");

-- CreateIndex
CREATE UNIQUE INDEX "SupplierItem_supplierId_code_key" ON "SupplierItem"("supplierId", "code");

-- CreateIndex
CREATE INDEX "PriceList_supplierId_validFrom_idx" ON "PriceList"("supplierId", "validFrom");

-- CreateIndex
CREATE INDEX "PriceList_supplierId_sourceSha256_idx" ON "PriceList"("supplierId", "sourceSha256");

-- CreateIndex
CREATE INDEX "PriceLine_itemId_unit_breakFrom_idx" ON "PriceLine"("itemId", "unit", "breakFrom");

-- CreateIndex
CREATE UNIQUE INDEX "PriceLine_listId_itemId_unit_breakFrom_key" ON "PriceLine"("listId", "itemId", "unit", "breakFrom");

-- CreateIndex
CREATE INDEX "ExchangeRate_from_to_onDate_idx" ON "ExchangeRate"("from", "to", "onDate");

-- CreateIndex
CREATE UNIQUE INDEX "ImportMapping_kind_supplierId_key" ON "ImportMapping"("kind", "supplierId");

-- CreateIndex
CREATE INDEX "FileImportRow_importId_change_rowNumber_idx" ON "FileImportRow"("importId", "change", "rowNumber");

-- CreateIndex
CREATE UNIQUE INDEX "Design_code_key" ON "Design"("code");

-- CreateIndex
CREATE UNIQUE INDEX "DesignRevision_designId_number_key" ON "DesignRevision"("designId", "number");

-- CreateIndex
CREATE INDEX "CostSheet_designId_idx" ON "CostSheet"("designId");

-- CreateIndex
CREATE INDEX "CostSheet_clientId_idx" ON "CostSheet"("clientId");

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Account" ADD CONSTRAINT "Account_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ApiToken" ADD CONSTRAINT "ApiToken_createdById_fkey" FOREIGN KEY ("createdById") REFERENCES "User"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Person" ADD CONSTRAINT "Person_gradeId_fkey" FOREIGN KEY ("gradeId") REFERENCES "LabourGrade"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Material" ADD CONSTRAINT "Material_preferredSupplierId_fkey" FOREIGN KEY ("preferredSupplierId") REFERENCES "Supplier"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SupplierItem" ADD CONSTRAINT "SupplierItem_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SupplierItem" ADD CONSTRAINT "SupplierItem_materialId_fkey" FOREIGN KEY ("materialId") REFERENCES "Material"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceList" ADD CONSTRAINT "PriceList_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceLine" ADD CONSTRAINT "PriceLine_listId_fkey" FOREIGN KEY ("listId") REFERENCES "PriceList"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PriceLine" ADD CONSTRAINT "PriceLine_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "SupplierItem"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "FileImportRow" ADD CONSTRAINT "FileImportRow_importId_fkey" FOREIGN KEY ("importId") REFERENCES "FileImport"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "DesignRevision" ADD CONSTRAINT "DesignRevision_designId_fkey" FOREIGN KEY ("designId") REFERENCES "Design"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CostSheet" ADD CONSTRAINT "CostSheet_designId_fkey" FOREIGN KEY ("designId") REFERENCES "Design"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CostSheet" ADD CONSTRAINT "CostSheet_clientId_fkey" FOREIGN KEY ("clientId") REFERENCES "Client"("id") ON DELETE SET NULL ON UPDATE CASCADE;
