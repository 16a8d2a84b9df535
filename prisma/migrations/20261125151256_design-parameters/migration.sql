-- AlterTable
ALTER TABLE "DesignRevision" ADD COLUMN     "parameters" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN     "unitSystem" TEXT NOT NULL DEFAULT 'metric',
ADD COLUMN     "variants" JSONB NOT NULL DEFAULT '[]';

-- AlterTable
ALTER TABLE "CostSheet" ADD COLUMN     "parameterValues" JSONB NOT NULL DEFAULT '{}',
ADD COLUMN     "revision" INTEGER,
ADD COLUMN     "variant" TEXT;

-- Every revision so far is in the unit its design has now.
UPDATE "DesignRevision" SET "unitSystem" = "Design"."unitSystem" FROM "Design" WHERE "Design"."id" = "DesignRevision"."designId";
