namespace Turnrow.Fabric.Bodies;

/// <summary>Body measures of children, as published, in both units as published: the one is not always the other converted.</summary>
internal static class ChildrenTable
{
    public const string Text =
        """
        source,standard body measurements for children and youth,numbers from memory
        measure,unit,2,4,6,8,10,12,14,16
        chest,cm,53,58.5,63.5,67,71,76,80,82.5
        cross-back,cm,23.5,25,26,27,28.5,30.5,31,33
        arm-length,cm,21.5,26.5,29,31.5,34.5,38,40.5,42
        upper-arm,cm,18,19,20.5,21.5,22,23,23.5,24
        armhole-depth,cm,10.5,12,12.5,14,15.5,16.5,17.5,19
        back-waist-length,cm,21.5,24,26.5,31.5,35.5,38,39.5,40.5
        chest,in,21,23,25,26.5,28,30,31.5,32.5
        centre-back-neck-to-wrist,in,18,19.5,20.5,22,24,26,27,28
        back-waist-length,in,8.5,9.5,10.5,12.5,14,15,15.5,16
        cross-back,in,9.25,9.75,10.25,10.75,11.25,12,12.25,13
        arm-length,in,8.5,10.5,11.5,12.5,13.5,15,16,16.5
        upper-arm,in,7,7.5,8,8.5,8.75,9,9.25,9.5
        armhole-depth,in,4.25,4.75,5,5.5,6,6.5,7,7.5
        waist,in,21,21.5,22.5,23.5,24.5,25.5,26.5,27.5
        hips,in,22,23.5,25,28,29.5,31.5,33,35.5
        source,length chart of the same standard,numbers from memory
        hip-length,cm,26.5,29,31.5,36.5,40.5,43,44.5,45.5
        tunic-length,cm,36.5,39,41.5,46.5,50.5,53,54.5,55.5
        hip-length,in,10.5,11.5,12.5,14.5,16,17,17.5,18
        tunic-length,in,14.5,15.5,16.5,18.5,20,21,21.5,22
        source,size lists of makers of hats and gloves,centimetres converted
        head,cm,48.5,48.5-52,48.5-52,48.5-52,48.5-52,51-53.5,51-53.5,51-53.5
        hand,cm,10-14,14-15,14-15,14-15,14-15,14-15,14-15,15-19
        head,in,19,19-20.5,19-20.5,19-20.5,19-20.5,20-21,20-21,20-21
        hand,in,4-5.5,5.5-6,5.5-6,5.5-6,5.5-6,5.5-6,5.5-6,6-7.5
        """;
}
