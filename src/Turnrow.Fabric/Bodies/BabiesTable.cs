namespace Turnrow.Fabric.Bodies;

/// <summary>Body measures of babies, as published, in both units as published: the one is not always the other converted.</summary>
internal static class BabiesTable
{
    public const string Text =
        """
        source,standard body measurements for babies,numbers from memory
        measure,unit,3 months/3 m,6 months/6 m,12 months/12 m,18 months/18 m,24 months/24 m
        chest,cm,40.5,43,45.5,48,50.5
        centre-back-neck-to-wrist,cm,26.5,29,31.5,35.5,45.5
        back-waist-length,cm,15.5,17.5,19,20.5,21.5
        cross-back,cm,18.5,19.5,21,21.5,22
        arm-length,cm,15.5,16.5,19,20.5,21.5
        upper-arm,cm,14,15.5,16.5,17.5,19
        armhole-depth,cm,8.5,9,9.5,10,10.5
        waist,cm,45.5,48,50.5,52,53.5
        hips,cm,48,50.5,50.5,53.5,56
        chest,in,16,17,18,19,20
        centre-back-neck-to-wrist,in,10.5,11.5,12.5,14,18
        back-waist-length,in,6,7,7.5,8,8.5
        cross-back,in,7.25,7.75,8.25,8.5,8.75
        arm-length,in,6,6.5,7.5,8,8.5
        upper-arm,in,5.5,6,6.5,7,7.5
        armhole-depth,in,3.25,3.5,3.75,4,4.25
        waist,in,18,19,20,20.5,21
        hips,in,19,20,20,21,22
        source,size lists of makers of hats and gloves,centimetres converted
        head,cm,38,40.5,43,45.5,45.5-48.5
        hand,cm,7.5-10,10-14,10-14,10-14,10-14
        head,in,15,16,17,18,18-19
        hand,in,3-4,4-5.5,4-5.5,4-5.5,4-5.5
        """;
}
